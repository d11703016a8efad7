package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.griplore.query.TestArchive;
import org.griplore.query.TestArchive.Told;
import org.griplore.query.browse.TestQuestion.TyreRow;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.discipline.Difference;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not change a contrast; each property holds for tests drawn from a printed seed. */
class ContrastPropertiesTest {
  private static final List<String> MODELS =
      List.of("Velmora Aurelis 4", "Velmora Aurelis 5", "Quillarn Tarvion 11", "Kirazumi Hayari 3");

  @TempDir Path folder;
  private int archives;

  private record Figure(String model, double metres) {}

  private static List<List<Figure>> drawn(Random random) {
    List<List<Figure>> tests = new ArrayList<>();
    for (int test = 0; test < 5; test++) {
      List<Figure> figures = new ArrayList<>();
      for (int model = 0; model < MODELS.size(); model++) {
        if (model < 2 || random.nextBoolean()) {
          figures.add(new Figure(MODELS.get(model), 30 + model + random.nextGaussian()));
        }
      }
      tests.add(figures);
    }
    return tests;
  }

  private Told told(int number, List<Figure> figures, double factor) {
    Told told =
        TestArchive.told("t" + number, "20" + (14 + number) + "-05-01", SourceKind.OWN, null);
    for (Figure figure : figures) {
      told.with(figure.model(), "wet-braking", factor * figure.metres(), Unit.METRE, null);
    }
    return told;
  }

  private TestArchive newArchive() {
    return new TestArchive(folder.resolve("archive" + archives++));
  }

  private static Difference contrast(TestArchive archive) {
    return ((ContrastRow)
            archive
                .ask(
                    "contrast",
                    Map.of("model", MODELS.subList(0, 2), "discipline", List.of("wet-braking")))
                .rows()
                .get(0))
        .difference();
  }

  private static void assertSame(Difference one, Difference other) {
    assertThat(other.logDifference()).isCloseTo(one.logDifference(), within(1e-9));
    assertThat(other.logSe()).isCloseTo(one.logSe(), within(1e-7));
    assertThat(other.directTests()).isEqualTo(one.directTests());
    assertThat(other.direct()).isCloseTo(one.direct(), within(1e-7));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43, 44, 45})
  void aConstantFactorOnAWholeTestLeavesContrastsAndDeltasAlone(long seed) {
    Random random = new Random(seed);
    List<List<Figure>> tests = drawn(random);
    try (TestArchive plain = newArchive();
        TestArchive scaled = newArchive()) {
      for (int i = 0; i < tests.size(); i++) {
        plain.add(told(i, tests.get(i), 1));
        scaled.add(told(i, tests.get(i), i == 2 ? 1.07 + random.nextDouble() : 1));
      }
      assertSame(contrast(plain), contrast(scaled));
      assertThat(deltas(scaled))
          .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
          .containsExactlyElementsOf(deltas(plain));
    }
  }

  private static List<Double> deltas(TestArchive archive) {
    return archive.ask("test", Map.of("test", List.of("t2"))).rows().stream()
        .map(row -> ((TyreRow) row).figures().get("wet-braking").delta())
        .toList();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {51, 52, 53, 54, 55})
  void theOrderOfRowsAndOfTestsChangesNoContrast(long seed) {
    Random random = new Random(seed);
    List<List<Figure>> tests = drawn(random);
    List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4));
    Collections.shuffle(order, random);
    try (TestArchive plain = newArchive();
        TestArchive shuffled = newArchive()) {
      for (int i = 0; i < tests.size(); i++) {
        plain.add(told(i, tests.get(i), 1));
      }
      for (int i : order) {
        List<Figure> rows = new ArrayList<>(tests.get(i));
        Collections.shuffle(rows, random);
        shuffled.add(told(i, rows, 1));
      }
      assertSame(contrast(plain), contrast(shuffled));
    }
  }
}
