package org.griplore.ingest.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.Clock;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * How fast a long table is read into a new archive, beside a bare batch insert of the same rows
 * into one table of 18 columns. Both are timed in this run, one after the other, three times; the
 * ratio of the medians is printed. Run it with {@code mvn -pl ingest -am test-compile exec:java
 * -Dexec.classpathScope=test -Dexec.mainClass=org.griplore.ingest.bench.LongTableBench}.
 */
public final class LongTableBench {
  private static final long SEED = 20_260_101;
  private static final int ROUNDS = 3;
  private static final int ROWS_A_BATCH = 1000;

  private LongTableBench() {}

  /** Arguments: number of rows (one million when absent). */
  public static void main(String[] arguments) throws IOException, SQLException {
    int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
    PrintStream out = System.out;
    Path folder = Files.createTempDirectory("long-table-bench");
    try {
      Path csv = folder.resolve("long.csv");
      write(csv, rows);
      out.printf(Locale.ROOT, "%,d rows, %.0f MB, seed %d%n", rows, Files.size(csv) / 1e6, SEED);
      double[] bare = new double[ROUNDS];
      double[] archive = new double[ROUNDS];
      for (int round = 0; round < ROUNDS; round++) {
        bare[round] = bare(folder.resolve("bare" + round + ".db"), rows);
        archive[round] = archive(folder.resolve("archive" + round), csv, rows);
        out.printf(
            Locale.ROOT,
            "round %d: bare insert %,.0f rows/s, into the archive %,.0f rows/s, heap now %.0f MB%n",
            round + 1,
            bare[round],
            archive[round],
            (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1e6);
      }
      out.printf(
          Locale.ROOT,
          "median: bare %,.0f rows/s, archive %,.0f rows/s, ratio %.2f (wanted: at least 0.33)%n",
          median(bare),
          median(archive),
          median(archive) / median(bare));
    } finally {
      remove(folder);
    }
  }

  private static void write(Path csv, int rows) throws IOException {
    LongTableRows table = new LongTableRows(SEED);
    try (Writer writer = Files.newBufferedWriter(csv)) {
      writer.write(LongTableRows.HEADER + "\n");
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < rows; i++) {
        line.setLength(0);
        LongTableRows.write(table.next(), line);
        writer.append(line);
      }
    }
  }

  private static double bare(Path database, int rows) throws SQLException {
    LongTableRows table = new LongTableRows(SEED);
    long start = System.nanoTime();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database)) {
      try (Statement statement = connection.createStatement()) {
        statement.execute("PRAGMA journal_mode = WAL");
        statement.execute("PRAGMA synchronous = NORMAL");
        statement.execute(
            "CREATE TABLE long_table ("
                + String.join(
                    ", ", Stream.of(LongTableRows.HEADER.split(",")).map(c -> c + type(c)).toList())
                + ")");
      }
      connection.setAutoCommit(false);
      String marks = String.join(", ", Collections.nCopies(18, "?"));
      try (PreparedStatement insert =
          connection.prepareStatement("INSERT INTO long_table VALUES (" + marks + ")")) {
        for (int i = 1; i <= rows; i++) {
          bind(insert, table.next());
          insert.addBatch();
          if (i % ROWS_A_BATCH == 0) {
            insert.executeBatch();
          }
        }
        insert.executeBatch();
      }
      connection.commit();
    }
    return rows / seconds(start);
  }

  private static String type(String column) {
    return switch (column) {
      case "vehicle_mass_kg", "value", "spread", "runs", "place" -> " REAL";
      default -> " TEXT";
    };
  }

  private static void bind(PreparedStatement insert, Object[] row) throws SQLException {
    for (int i = 0; i < row.length; i++) {
      if (row[i] == null) {
        insert.setNull(i + 1, Types.NULL);
      } else if (row[i] instanceof Double number) {
        insert.setDouble(i + 1, number);
      } else {
        insert.setString(i + 1, (String) row[i]);
      }
    }
  }

  private static double archive(Path folder, Path csv, int rows) {
    long start = System.nanoTime();
    try (Archive archive = Archive.openOrCreate(folder)) {
      List<AddedSource> added =
          new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
              .add(List.of(csv), ReadOptions.NONE, (name, done, total) -> {});
      double rate = rows / seconds(start);
      if (added.get(0).outcome() == null || added.get(0).outcome().results() != rows) {
        throw new IllegalStateException("not all rows arrived: " + added);
      }
      return rate;
    }
  }

  private static double seconds(long start) {
    return (System.nanoTime() - start) / 1e9;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    java.util.Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
