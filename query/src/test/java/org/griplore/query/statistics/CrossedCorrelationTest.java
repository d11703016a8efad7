package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrossedCorrelationTest {
  /** Results of tests in some disciplines, a column a discipline. */
  private record Drawn(int[] test, int[] model, double[][] y) {
    /** Models have effects that stay with them; each pair of disciplines has a correlation. */
    static Drawn archive(int models, int tests, int field, double correlation, Random random) {
      int disciplines = 10;
      double[][] effects = new double[models][];
      double[] seldom = new double[models];
      for (int m = 0; m < models; m++) {
        effects[m] = related(disciplines, correlation, random);
        seldom[m] = random.nextGaussian();
      }
      List<int[]> arms = new ArrayList<>();
      List<double[]> values = new ArrayList<>();
      for (int t = 0; t < tests; t++) {
        double[] level = related(disciplines, 0, random);
        for (int m : field(seldom, field, random)) {
          double[] noise = related(disciplines, correlation, random);
          double[] value = new double[disciplines];
          for (int d = 0; d < disciplines; d++) {
            value[d] = 5 * level[d] + effects[m][d] + 0.5 * noise[d];
          }
          arms.add(new int[] {t, m});
          values.add(value);
        }
      }
      double[][] y = new double[disciplines][arms.size()];
      for (int i = 0; i < arms.size(); i++) {
        for (int d = 0; d < disciplines; d++) {
          y[d][i] = values.get(i)[d];
        }
      }
      return new Drawn(
          arms.stream().mapToInt(arm -> arm[0]).toArray(),
          arms.stream().mapToInt(arm -> arm[1]).toArray(),
          y);
    }

    private static double[] related(int disciplines, double correlation, Random random) {
      double common = Math.sqrt(correlation) * random.nextGaussian();
      double[] drawn = new double[disciplines];
      for (int d = 0; d < disciplines; d++) {
        drawn[d] = common + Math.sqrt(1 - correlation) * random.nextGaussian();
      }
      return drawn;
    }

    /** Some models are in many tests, others in few. */
    private static int[] field(double[] seldom, int field, Random random) {
      record Drawing(int model, double key) {}
      List<Drawing> all = new ArrayList<>();
      for (int m = 0; m < seldom.length; m++) {
        all.add(new Drawing(m, seldom[m] + 1.5 * random.nextGaussian()));
      }
      all.sort((a, b) -> Double.compare(a.key, b.key));
      return all.subList(0, Math.min(field, all.size())).stream()
          .mapToInt(Drawing::model)
          .toArray();
    }
  }

  /**
   * Ten disciplines that have nothing to do with each other make 45 pairs: about one in twenty is
   * told as related, where the interval that takes results as independent tells nearly half.
   */
  @Tag("simulation")
  @ParameterizedTest(name = "{0} models, {1} tests of {2}, correlation {3}")
  @CsvSource({
    "49, 60, 8, 0",
    "20, 30, 8, 0",
    "12, 10, 6, 0",
    "120, 200, 8, 0",
    "49, 60, 8, 0.5",
    "20, 30, 8, 0.5"
  })
  void intervalsHoldThoughModelsReturn(int models, int tests, int field, double correlation) {
    Random random = new Random(2011);
    int archives = 40;
    int pairs = 0;
    int missed = 0;
    int plain = 0;
    int archivesAboveFive = 0;
    for (int archive = 0; archive < archives; archive++) {
      Drawn drawn = Drawn.archive(models, tests, field, correlation, random);
      int before = missed;
      for (int a = 0; a < drawn.y.length; a++) {
        for (int b = 0; b < a; b++) {
          pairs++;
          CrossedCorrelation found =
              CrossedCorrelation.of(drawn.test, drawn.model, drawn.y[a], drawn.y[b]).orElseThrow();
          missed += found.interval(0.95).contains(correlation) ? 0 : 1;
          plain +=
              WithinGroupCorrelation.of(drawn.test, drawn.y[a], drawn.y[b])
                      .orElseThrow()
                      .interval(0.95)
                      .orElseThrow()
                      .contains(correlation)
                  ? 0
                  : 1;
        }
      }
      archivesAboveFive += missed - before > 5 ? 1 : 0;
    }
    assertThat((double) missed / pairs).as("missed of %d, seed 2011", pairs).isBetween(0.01, 0.08);
    assertThat(archivesAboveFive)
        .as("archives in which more than 5 of 45 are missed")
        .isLessThan(6);
    assertThat((double) plain / pairs).as("as if results were independent").isGreaterThan(0.25);
  }

  /** The definition, summed pair by pair of results: those that share a model, a test, or both. */
  @Test
  void theErrorIsTheSumOverResultsThatShareAModelOrATest() {
    int[] test = {0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 2};
    int[] model = {0, 1, 2, 3, 0, 1, 4, 1, 2, 3, 4};
    double[] x = {1, 2.5, 2, 4, 0, 3, 2, 1, 5, 3.5, 2};
    double[] y = {2, 1, 3, 3.5, 1, 2, 3, 0, 2, 2.5, 1};
    CrossedCorrelation found = CrossedCorrelation.of(test, model, x, y).orElseThrow();
    WithinGroupCorrelation within = WithinGroupCorrelation.of(test, x, y).orElseThrow();
    assertThat(found.r()).isEqualTo(within.r());
    double[] zx = standardised(test, x);
    double[] zy = standardised(test, y);
    double byModel = 0;
    double byTest = 0;
    double single = 0;
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < x.length; j++) {
        double product =
            (zx[i] * zy[i] - found.r() / 2 * (zx[i] * zx[i] + zy[i] * zy[i]))
                * (zx[j] * zy[j] - found.r() / 2 * (zx[j] * zx[j] + zy[j] * zy[j]));
        byModel += model[i] == model[j] ? product : 0;
        byTest += test[i] == test[j] ? product : 0;
        single += i == j ? product : 0;
      }
    }
    double both = byModel * 5 / 4 + byTest * 3 / 2 - single;
    double variance = Math.max(byModel * 5 / 4, both) / (11.0 * within.df());
    double se =
        Math.max(
            Math.sqrt(variance) / (1 - found.r() * found.r()), 1 / Math.sqrt(within.df() - 1.0));
    assertThat(found.se()).isCloseTo(se, within(1e-12));
    assertThat(found.interval(1 - found.p()).low() * found.interval(1 - found.p()).high())
        .as("the interval of the level 1 - p ends at zero")
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void nothingIsSaidOfAFewModelsOrOfOneLine() {
    int[] test = {0, 0, 0, 1, 1, 1};
    double[] x = {1, 2, 3, 1, 3, 2};
    double[] y = {2, 1, 3, 3, 1, 2};
    assertThat(CrossedCorrelation.of(test, new int[] {0, 1, 2, 0, 1, 2}, x, y))
        .isEqualTo(Optional.empty());
    assertThat(CrossedCorrelation.of(test, new int[] {0, 1, 2, 3, 4, 5}, x, x)).isEmpty();
  }

  private static double[] standardised(int[] test, double[] values) {
    double[] sum = new double[3];
    double[] count = new double[3];
    for (int i = 0; i < values.length; i++) {
      sum[test[i]] += values[i];
      count[test[i]]++;
    }
    double squares = 0;
    double[] centred = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      centred[i] = values[i] - sum[test[i]] / count[test[i]];
      squares += centred[i] * centred[i];
    }
    for (int i = 0; i < values.length; i++) {
      centred[i] /= Math.sqrt(squares / values.length);
    }
    return centred;
  }
}
