package org.griplore.query.retold;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.griplore.query.retold.ToldTwice.DifferingCell;
import org.griplore.query.retold.ToldTwice.Likeness;
import org.griplore.query.simulation.DrawnArchive;
import org.griplore.query.simulation.DrawnArchive.Said;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDecision.Verdict;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestsToldTwiceTest {
  private static final double[] METRES = {38.42, 39.15, 40.08, 37.61, 41.3};

  private static TestsToldTwice in(DrawnArchive archive) {
    Snapshot snapshot = archive.evidence().snapshot();
    return TestsToldTwice.in(snapshot, DisciplineCatalogue.standard());
  }

  private static void tell(DrawnArchive archive, Said said, Unit unit, double... values) {
    int test = archive.test(said);
    for (int i = 0; i < values.length; i++) {
      archive.value(archive.entry(test, i), "wet-braking", values[i], unit, Double.NaN, 0);
    }
  }

  private static Said said(String date, SourceKind kind, String size) {
    return new Said(date, kind, size, null, null);
  }

  @Test
  void theOneWithACoarserRoundingIsFoundAndWhatDiffersIsTold() {
    DrawnArchive archive = new DrawnArchive();
    archive.models(5);
    tell(archive, said("2021-03-01", SourceKind.INDEPENDENT, "205/55 R16"), Unit.METRE, METRES);
    tell(
        archive,
        said("2021-05", SourceKind.OWN, "205/55R16 91V"),
        Unit.METRE,
        38.4,
        39.2,
        40.1,
        37.6,
        41.9);
    List<ToldTwice> pairs = in(archive).pairs();
    assertThat(pairs).hasSize(1);
    ToldTwice pair = pairs.get(0);
    assertThat(pair.first()).as("the own one counts").isEqualTo(1);
    assertThat(pair.second()).isZero();
    assertThat(pair.likeness()).isEqualTo(Likeness.EQUAL_FIGURES);
    assertThat(pair.cells()).isEqualTo(5);
    assertThat(pair.alike()).isEqualTo(4);
    assertThat(pair.differing()).containsExactly(new DifferingCell(4, 0, 9, 4));
    assertThat(in(archive).isRetold(0)).isTrue();
    assertThat(in(archive).isRetold(1)).isFalse();
  }

  @Test
  void perCentOfTheBestIsTheSameTestInAnotherUnit() {
    DrawnArchive archive = new DrawnArchive();
    archive.models(5);
    tell(archive, said("2021-03-01", SourceKind.OWN, null), Unit.METRE, METRES);
    double[] perCent = new double[5];
    java.util.Arrays.setAll(perCent, i -> Math.rint(1000 * 37.61 / METRES[i]) / 10);
    tell(archive, said("2021-04-01", SourceKind.INDEPENDENT, null), Unit.PERCENT_OF_BEST, perCent);
    List<ToldTwice> pairs = in(archive).pairs();
    assertThat(pairs).hasSize(1);
    assertThat(pairs.get(0).likeness()).isEqualTo(Likeness.PROPORTIONAL_FIGURES);
    assertThat(pairs.get(0).alike()).isEqualTo(5);
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "2021-09-15, 205/55 R16", // 198 days later
    "2021-03-20, 225/45 R17"
  })
  void testsFarApartOrOfAnotherSizeAreTwo(String date, String size) {
    DrawnArchive archive = new DrawnArchive();
    archive.models(5);
    tell(archive, said("2021-03-01", SourceKind.OWN, "205/55 R16"), Unit.METRE, METRES);
    tell(archive, said(date, SourceKind.OWN, size), Unit.METRE, METRES);
    assertThat(in(archive).pairs()).isEmpty();
  }

  @Test
  void threeTyresInCommonOrADecisionMakeThemTwo() {
    DrawnArchive archive = new DrawnArchive();
    archive.models(5);
    tell(archive, Said.own("2021-03-01", null), Unit.METRE, METRES);
    tell(archive, Said.own("2021-03-02", null), Unit.METRE, 38.42, 39.15, 40.08);
    assertThat(in(archive).pairs()).isEmpty();
    tell(archive, Said.own(null, null), Unit.METRE, METRES);
    assertThat(in(archive).pairs()).as("no date, no size").hasSize(1);
    archive.decide("t1", "t3", Verdict.APART);
    assertThat(in(archive).pairs()).isEmpty();
    archive.decide("t1", "t2", Verdict.SAME);
    assertThat(in(archive).pairs()).extracting(ToldTwice::likeness).containsOnly(Likeness.DECIDED);
    assertThat(in(archive).isRetold(1)).isTrue();
  }

  /** What is drawn of a test's results: metres and per cent, decibels, half points. */
  private record Truth(double[][] effects, Random random) {
    private static final String[] DISCIPLINES = {
      "wet-braking", "wet-handling", "exterior-noise", "comfort", "steering-response"
    };
    private static final double[] LEVEL = {40, 80, 71, 7, 7};
    private static final double[] SPREAD = {0.04, 0.015, 1.2, 0.8, 0.8};
    private static final double[] STEP = {0.1, 0.1, 0.1, 0.5, 0.5};

    double[][] test(int[] field, boolean ratingsOnly) {
      double[][] values = new double[DISCIPLINES.length][];
      for (int d = ratingsOnly ? 3 : 0; d < DISCIPLINES.length; d++) {
        boolean ratio = d < 2;
        double level = LEVEL[d] * (ratio ? Math.exp(0.05 * random.nextGaussian()) : 1);
        values[d] = new double[field.length];
        for (int i = 0; i < field.length; i++) {
          double effect = SPREAD[d] * (0.8 * effects[d][field[i]] + 0.6 * random.nextGaussian());
          double value = ratio ? level * Math.exp(effect) : level + effect;
          values[d][i] = Math.rint(value / STEP[d]) * STEP[d];
        }
      }
      return values;
    }
  }

  private static int put(DrawnArchive archive, Said said, int[] field, double[][] values) {
    int test = archive.test(said);
    for (int i = 0; i < field.length; i++) {
      int entry = archive.entry(test, field[i]);
      for (int d = 0; d < values.length; d++) {
        if (values[d] != null) {
          archive.value(entry, Truth.DISCIPLINES[d], values[d][i], Double.NaN, 0);
        }
      }
    }
    return test;
  }

  /**
   * An archive of independent tests among which some are told a second time: rounded to whole
   * metres less often than to tenths, tyres left out, one figure in ten another. The retold ones
   * are found, others hardly ever, and the time is not that of all pairs.
   */
  @Tag("simulation")
  @ParameterizedTest(name = "{0} tests, {1} models, ratings only {2}")
  @CsvSource({"2000, 60, false, 0.95", "20000, 400, false, 0.95", "2000, 60, true, 0.5"})
  void retoldTestsAreFoundAmongMany(int tests, int models, boolean ratingsOnly, double leastFound) {
    Random random = new Random(180);
    DrawnArchive archive = new DrawnArchive();
    archive.models(models);
    double[][] effects = new double[Truth.DISCIPLINES.length][models];
    for (double[] of : effects) {
      java.util.Arrays.setAll(of, m -> random.nextGaussian());
    }
    Truth truth = new Truth(effects, random);
    String[] sizes = {"205/55 R16", "225/45 R17", "195/65 R15"};
    List<int[]> planted = new ArrayList<>();
    for (int t = 0; t < tests; t++) {
      // models come and go: a field is drawn from those of its time
      LocalDate day = LocalDate.of(2005, 1, 1).plusDays((long) (7000.0 * t / tests));
      int from = (int) ((models - 40.0) * t / tests);
      int[] field = DrawnArchive.some(6 + random.nextInt(6), 40, random);
      for (int i = 0; i < field.length; i++) {
        field[i] += Math.max(0, from);
      }
      double[][] values = truth.test(field, ratingsOnly);
      Said said = said(day.toString(), SourceKind.OWN, sizes[t % 3]);
      int first = put(archive, said, field, values);
      if (t % 50 == 7) {
        int kept = Math.max(5, field.length - 2);
        int[] some = java.util.Arrays.copyOf(field, kept);
        double[][] again = new double[values.length][];
        for (int d = 0; d < values.length; d++) {
          if (values[d] != null && (ratingsOnly || d != 1)) {
            again[d] = java.util.Arrays.copyOf(values[d], kept);
            for (int i = 0; i < kept; i++) {
              if (random.nextInt(10) == 0) {
                again[d][i] *= 1.02;
              }
            }
          }
        }
        String later = day.plusDays(random.nextInt(90)).toString();
        planted.add(
            new int[] {
              first, put(archive, said(later, SourceKind.INDEPENDENT, null), some, again)
            });
      }
    }
    Snapshot snapshot = archive.evidence().snapshot();
    ThreadMXBean thread = ManagementFactory.getThreadMXBean();
    long start = thread.getCurrentThreadCpuTime();
    TestsToldTwice found = TestsToldTwice.in(snapshot, DisciplineCatalogue.standard());
    double seconds = (thread.getCurrentThreadCpuTime() - start) / 1e9;
    Set<List<Integer>> pairs = new HashSet<>();
    found.pairs().forEach(pair -> pairs.add(List.of(pair.first(), pair.second())));
    long hits = planted.stream().filter(p -> pairs.contains(List.of(p[0], p[1]))).count();
    long others = pairs.size() - hits;
    assertThat((double) hits / planted.size())
        .as("found of those retold")
        .isGreaterThan(leastFound);
    assertThat((double) others / tests).as("others").isLessThan(0.002);
    assertThat(seconds).isLessThan(6);
  }
}
