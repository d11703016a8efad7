package org.griplore.ui.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * Reads a long table of a million results into a new archive, beside a bare batch insert of the
 * same rows (18 columns of text, one table without index or key, one transaction, the same SQLite
 * and journal mode; the rows are in memory and cut into fields before the clock starts).
 */
public final class LongTableBench {
  private static final int TIMES = 3;

  private LongTableBench() {}

  /** Arguments: the number of rows (1,000,000 when not given). */
  public static void main(String[] arguments) throws IOException, SQLException {
    int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
    Path folder = Files.createTempDirectory("griplore-bench-");
    Path file = folder.resolve("long.csv");
    LongTableFile.write(file, rows, 2000, 1);
    System.out.printf("%d rows, %d MB%n", rows, Files.size(file) >> 20);
    double bestPeer = 0;
    double bestOurs = 0;
    for (int time = 1; time <= TIMES; time++) {
      double peer = rows / bare(file, folder.resolve("bare-" + time + ".db"));
      double ours = rows / intake(file, folder.resolve("archive-" + time), rows);
      bestPeer = Math.max(bestPeer, peer);
      bestOurs = Math.max(bestOurs, ours);
      System.out.printf(
          "%d: bare batch insert %,.0f rows/s, intake %,.0f rows/s, ratio %.2f%n",
          time, peer, ours, ours / peer);
    }
    System.out.printf(
        "best of %d: bare batch insert %,.0f rows/s, intake %,.0f rows/s, ratio %.2f%n",
        TIMES, bestPeer, bestOurs, bestOurs / bestPeer);
    Folders.remove(folder);
  }

  private static double bare(Path file, Path database) throws IOException, SQLException {
    List<String[]> rows = new ArrayList<>();
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      reader.readLine();
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        rows.add(line.split(",", -1));
      }
    }
    String[] columns = LongTableFile.HEADER.split(",");
    long start = System.nanoTime();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA journal_mode = WAL");
      statement.execute("CREATE TABLE row (" + String.join(" TEXT, ", columns) + " TEXT)");
      connection.setAutoCommit(false);
      String marks = String.join(", ", Collections.nCopies(columns.length, "?"));
      try (PreparedStatement insert =
          connection.prepareStatement("INSERT INTO row VALUES (" + marks + ")")) {
        int waiting = 0;
        for (String[] row : rows) {
          for (int i = 0; i < columns.length; i++) {
            insert.setString(i + 1, row[i]);
          }
          insert.addBatch();
          if (++waiting == 1000) {
            insert.executeBatch();
            waiting = 0;
          }
        }
        insert.executeBatch();
      }
      connection.commit();
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static double intake(Path file, Path folder, int rows) {
    long start = System.nanoTime();
    try (Archive archive = Archive.openOrCreate(folder)) {
      List<AddedSource> added =
          new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
              .add(List.of(file), ReadOptions.NONE, (name, done, total) -> {});
      if (added.get(0).outcome() == null || added.get(0).outcome().results() != rows) {
        throw new IllegalStateException("not all rows were taken: " + added);
      }
    }
    return (System.nanoTime() - start) / 1e9;
  }
}
