package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RevisionChangesTest {
  @TempDir Path folder;

  private record Key(String test, String model, String size, String discipline) {}

  private static AdditionOutcome add(Archive archive, Map<Key, Double> figures, long content) {
    try (Addition addition =
        archive.begin(Figures.original("a.csv", "content " + content), "t", Figures.NOON)) {
      figures.forEach(
          (key, value) -> {
            Result result =
                new Result(
                    key.discipline(),
                    value,
                    Unit.SECOND,
                    null,
                    null,
                    null,
                    ResultCells.ofValue(new Cell("", 1, 1, value.toString())),
                    "");
            Entry entry = new Entry(key.model(), null, key.size(), List.of(result));
            addition.put(
                new TestReport(key.test(), Details.NONE, List.of(entry), List.of(), List.of()));
          });
      addition.put(
          new Finding(Finding.Kind.ASSUMED, null, "s " + content, "seconds", "name the unit"));
      return addition.commit();
    }
  }

  /** Each change that was made is told, and nothing else. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void whatChangedIsToldAndNothingElse(long seed) {
    Random random = new Random(seed);
    try (Archive archive = Archive.openOrCreate(folder)) {
      Map<Key, Double> before = figures(random);
      add(archive, before, 0);
      Map<Key, Double> after = new HashMap<>(before);
      List<String> expected = new ArrayList<>();
      for (Key key : before.keySet()) {
        String of =
            key.model()
                + (key.size() == null ? "" : " in " + key.size())
                + ", "
                + key.discipline()
                + ", test "
                + key.test();
        switch (random.nextInt(12)) {
          case 0 -> {
            after.remove(key);
            expected.add("Gone: " + of + " (was " + before.get(key) + " s).");
          }
          case 1 -> {
            after.put(key, before.get(key) + 1);
            expected.add(
                "Changed: " + of + ": " + before.get(key) + " s became " + after.get(key) + " s.");
          }
          default -> {}
        }
      }
      after.put(new Key("T9", "Velmar Ostra 0", null, "wet-handling"), 71.5);
      expected.add("New: Velmar Ostra 0, wet-handling, test T9: 71.5 s.");
      AdditionOutcome outcome = add(archive, after, 1);
      assertThat(outcome.changes()).containsExactlyInAnyOrderElementsOf(expected);
      assertThat(archive.revisionChanges(outcome.revision())).isEqualTo(outcome.changes());
      assertThat(archive.revisionChanges(1)).isEmpty();
    }
  }

  private static Map<Key, Double> figures(Random random) {
    String[] sizes = {null, "205/55 R16", "225/45 R17", "\ud83d\ude97", "\uffee"};
    Map<Key, Double> figures = new HashMap<>();
    for (int i = 0; i < 150; i++) {
      figures.put(
          new Key(
              "T" + random.nextInt(4),
              "Velmar Ostra " + random.nextInt(6),
              sizes[random.nextInt(sizes.length)],
              "discipline-" + random.nextInt(4)),
          (double) random.nextInt(90));
    }
    return figures;
  }

  @Test
  void manyChangesAreCountedAndFindingsBelongToTheirReading() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "a.csv", 3, 0);
      AdditionOutcome outcome = Figures.add(archive, "a.csv", 3, 1);
      assertThat(outcome.changes()).hasSize(51).last().isEqualTo("And 250 more changes.");
      AdditionOutcome same = add(archive, Map.of(), 5);
      assertThat(archive.findingsOf(same.revision()))
          .singleElement()
          .extracting(finding -> finding.finding().found())
          .isEqualTo("s 5");
      add(archive, Map.of(), 6);
      assertThat(archive.findingsOf(same.revision())).hasSize(1);
      assertThat(archive.findings()).hasSize(1);
    }
  }
}
