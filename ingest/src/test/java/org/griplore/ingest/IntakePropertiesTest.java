package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not change what is read; each property holds for tests drawn from a printed seed. */
class IntakePropertiesTest {
  private static final String LINEAGE =
      """
      maker,line,model,generation,follows,aliases
      Velmora,Aurelis,Aurelis 4,1,,Velmora Aurelis IV
      Velmora,Aurelis,Aurelis 5,2,Aurelis 4,VM Aurelis 5
      Quillarn,Tarvion,Tarvion 11,1,,
      Ostrané,Corvant,Corvant II,1,,
      Hjortmåne,Snöklar,Snöklar 9,1,,
      """;
  private static final List<List<String>> SPELLINGS =
      List.of(
          List.of("Velmora Aurelis 4", "VELMORA AURELIS 4", "Velmora Aurelis IV", "Aurelis 4"),
          List.of("Velmora Aurelis 5", "Velmora Aurelys 5", "VM Aurelis 5", "Velmora-Aurelis 5"),
          List.of("Quillarn Tarvion 11", "Quilarn Tarvion 11", "Tarvion 11", "quillarn tarvion11"),
          List.of("Ostrané Corvant II", "Ostrane Corvant II", "Ostrané Corvent II"),
          List.of("Hjortmåne Snöklar 9", "Hjortmane Snoklar 9", "Snöklar 9"));

  @TempDir Path folder;
  private int archives;

  /** A drawn test: models by number, with a figure in metres, seconds and km/h each. */
  private record Drawn(String key, List<double[]> rows) {
    static Drawn of(String key, Random random) {
      List<double[]> rows = new ArrayList<>();
      for (int model = 0; model < SPELLINGS.size(); model++) {
        rows.add(
            new double[] {
              model,
              30 + Math.rint(50 * random.nextDouble()) / 10,
              80 + Math.rint(500 * random.nextDouble()) / 100,
              75 + Math.rint(100 * random.nextDouble()) / 10
            });
      }
      return new Drawn(key, rows);
    }

    /** The test as a wide table in these units, its rows in the order given. */
    String wide(Unit distance, Unit time, Unit speed, List<double[]> order, Random spelling) {
      StringBuilder text =
          new StringBuilder("Test: " + key + "\nDate: 2021-06-14\n\nTyre;Wet braking (")
              .append(distance.symbol())
              .append(");Wet handling (")
              .append(time.symbol())
              .append(");Straight aquaplaning (")
              .append(speed.symbol())
              .append(")\n");
      for (double[] row : order) {
        List<String> spellings = SPELLINGS.get((int) row[0]);
        text.append(spellings.get(spelling.nextInt(spellings.size())))
            .append(';')
            .append(Unit.METRE.convert(row[1], distance))
            .append(';')
            .append(Unit.SECOND.convert(row[2], time))
            .append(';')
            .append(Unit.KILOMETRE_PER_HOUR.convert(row[3], speed))
            .append('\n');
      }
      return text.toString();
    }

    /** The test as rows of a long table. */
    List<String> rowsOfLongTable() {
      List<String> lines = new ArrayList<>();
      for (double[] row : rows) {
        String start = key + ",2021-06-14," + SPELLINGS.get((int) row[0]).get(0) + ",";
        lines.add(start + "wet-braking," + row[1] + ",m");
        lines.add(start + "wet-handling," + row[2] + ",s");
        lines.add(start + "straight-aquaplaning," + row[3] + ",km/h");
      }
      return lines;
    }
  }

  private Archive newArchive() {
    return Archive.openOrCreate(folder.resolve("archive" + archives++));
  }

  private static List<AddedSource> add(Archive archive, Path... paths) {
    List<AddedSource> added =
        new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
            .add(List.of(paths), ReadOptions.NONE, (name, done, total) -> {});
    assertThat(added).allMatch(source -> source.refusal() == null);
    return added;
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static Map<String, Double> figures(Archive archive) {
    Snapshot s = archive.snapshot();
    Map<String, Double> figures = new TreeMap<>();
    for (int i = 0; i < s.results().count(); i++) {
      int entry = s.results().entry()[i];
      figures.put(
          s.tests().get(s.entries().test()[entry]).key()
              + " | "
              + s.models().get(s.entries().model()[entry]).name()
              + " | "
              + s.disciplines().get(s.results().discipline()[i])
              + " | "
              + s.units().get(s.results().unit()[i]),
          s.results().value()[i]);
    }
    return figures;
  }

  private static void assertSame(Map<String, Double> some, Map<String, Double> others) {
    assertThat(some.keySet()).isEqualTo(others.keySet());
    some.forEach(
        (what, figure) ->
            assertThat(others.get(what))
                .as(what)
                .isCloseTo(figure, org.assertj.core.data.Offset.offset(1e-9 * figure)));
  }

  private Map<String, Double> plain(Drawn drawn) throws IOException {
    try (Archive archive = newArchive()) {
      Path lineage = write("lineage.csv", LINEAGE);
      String table =
          drawn.wide(
              Unit.METRE, Unit.SECOND, Unit.KILOMETRE_PER_HOUR, drawn.rows(), new FirstSpelling());
      add(archive, lineage, write("plain.csv", table));
      return figures(archive);
    }
  }

  /** Takes the first spelling always. */
  private static final class FirstSpelling extends Random {
    @Override
    public int nextInt(int bound) {
      return 0;
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14, 15})
  void unitsSpellingsAndRowOrderChangeNothing(long seed) throws IOException {
    Random random = new Random(seed);
    Drawn drawn = Drawn.of("drawn-" + seed, random);
    List<double[]> order = new ArrayList<>(drawn.rows());
    Collections.shuffle(order, random);
    Unit distance = List.of(Unit.FOOT, Unit.YARD, Unit.METRE).get(random.nextInt(3));
    String table = drawn.wide(distance, Unit.MINUTE, Unit.MILE_PER_HOUR, order, random);
    try (Archive archive = newArchive()) {
      add(archive, write("lineage.csv", LINEAGE), write("other.csv", table));
      assertSame(plain(drawn), figures(archive));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23, 24, 25})
  void theReadingOrderOfFilesChangesNothing(long seed) throws IOException {
    Random random = new Random(seed);
    List<Path> files = new ArrayList<>();
    files.add(write("lineage.csv", LINEAGE));
    for (int i = 0; i < 4; i++) {
      Drawn drawn = Drawn.of("order-" + i, random);
      String table =
          drawn.wide(Unit.METRE, Unit.SECOND, Unit.KILOMETRE_PER_HOUR, drawn.rows(), random);
      files.add(write("order" + i + ".csv", table));
    }
    Map<String, Double> together;
    try (Archive archive = newArchive()) {
      add(archive, files.toArray(Path[]::new));
      together = figures(archive);
    }
    Collections.shuffle(files, random);
    try (Archive archive = newArchive()) {
      for (Path file : files) {
        add(archive, file);
      }
      assertSame(together, figures(archive));
      assertThat(archive.models()).hasSize(5);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32, 33})
  void theOrderOfALongTablesRowsChangesNothing(long seed) throws IOException {
    Random random = new Random(seed);
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      rows.addAll(Drawn.of("long-" + i, random).rowsOfLongTable());
    }
    String header = "test,date,model,discipline,value,unit\n";
    Map<String, Double> inOrder;
    try (Archive archive = newArchive()) {
      add(archive, write("long.csv", header + String.join("\n", rows) + "\n"));
      inOrder = figures(archive);
    }
    Collections.shuffle(rows, random);
    try (Archive archive = newArchive()) {
      add(archive, write("long.csv", header + String.join("\n", rows) + "\n"));
      assertSame(inOrder, figures(archive));
      assertThat(archive.snapshot().entries().count()).isEqualTo(25);
      assertThat(archive.findings()).noneMatch(f -> f.finding().kind().name().equals("CONFLICT"));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43})
  void aConstantFactorOnATestLeavesItsRatiosAlone(long seed) throws IOException {
    Random random = new Random(seed);
    Drawn drawn = Drawn.of("factor", random);
    double factor = 0.9 + 0.2 * random.nextDouble();
    List<double[]> rows = new ArrayList<>();
    drawn.rows().forEach(r -> rows.add(new double[] {r[0], r[1] * factor, r[2], r[3]}));
    Map<String, Double> before = plain(drawn);
    Map<String, Double> after = plain(new Drawn("factor", rows));
    String key = "factor | Velmora Aurelis 5 | wet-braking | m";
    String other = "factor | Quillarn Tarvion 11 | wet-braking | m";
    assertThat(after.get(key) / after.get(other))
        .isCloseTo(before.get(key) / before.get(other), org.assertj.core.data.Offset.offset(1e-12));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {51, 52, 53})
  void aSecondReadingChangesNothingAndAChangedFileSaysWhatChanged(long seed) throws IOException {
    Random random = new Random(seed);
    Drawn drawn = Drawn.of("again", random);
    String table =
        drawn.wide(
            Unit.METRE, Unit.SECOND, Unit.KILOMETRE_PER_HOUR, drawn.rows(), new FirstSpelling());
    try (Archive archive = newArchive()) {
      Path file = write("again.csv", table);
      add(archive, file);
      long stamp = archive.stamp();
      assertThat(add(archive, file).get(0).outcome().status())
          .isEqualTo(AdditionOutcome.Status.UNCHANGED);
      assertThat(archive.stamp()).isEqualTo(stamp);
      drawn.rows().get(1)[1] += 1;
      write(
          "again.csv",
          drawn.wide(
              Unit.METRE, Unit.SECOND, Unit.KILOMETRE_PER_HOUR, drawn.rows(), new FirstSpelling()));
      AdditionOutcome outcome = add(archive, file).get(0).outcome();
      assertThat(outcome.status()).isEqualTo(AdditionOutcome.Status.REVISED);
      assertThat(outcome.changes()).hasSize(1);
      assertThat(outcome.changes().get(0))
          .startsWith("Changed: Velmora Aurelis 5, wet-braking")
          .contains(String.format(Locale.ROOT, "%s m", drawn.rows().get(1)[1]));
    }
  }
}
