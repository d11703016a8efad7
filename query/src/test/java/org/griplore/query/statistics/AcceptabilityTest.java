package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.griplore.query.statistics.Acceptability.Missing;
import org.griplore.query.statistics.Acceptability.Weights;
import org.griplore.store.vocabulary.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lahdelma and Salminen 2001, Operations Research 49:444: acceptability is a share of the weight
 * space, which for two and three disciplines is a length and an area.
 */
class AcceptabilityTest {
  private static final int DRAWS = 100_000;

  @Test
  void twoDisciplinesAreALength() {
    // The first is better by 1 in one and worse by 3 in the other: w > 3/4.
    double[][] scores = {{1, 0}, {0, 3}};
    Acceptability a = of(scores, Weights.uniform(2), Missing.COMMON);
    assertThat(a.place(0, 1)).isCloseTo(0.25, within(5 * a.error(0.25)));
    assertThat(a.place(0, 1) + a.place(0, 2)).isEqualTo(1);
    assertThat(a.within(1, 2)).isEqualTo(1);
    assertThat(a.centralWeights(0).orElseThrow()[0]).isCloseTo(0.875, within(0.002));
    assertThat(a.centralWeights(1).orElseThrow()[0]).isCloseTo(0.375, within(0.003));
  }

  @Test
  void threeDisciplinesAreAnArea() {
    // Each best in one by as much: a third each. A fourth, good in all, takes the middle:
    // first where all weights are below 1/2, a quarter of the triangle.
    double[][] three = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    Acceptability a = of(three, Weights.uniform(3), Missing.COMMON);
    for (int model = 0; model < 3; model++) {
      for (int place = 1; place <= 3; place++) {
        assertThat(a.place(model, place)).isCloseTo(1.0 / 3, within(5 * a.error(1.0 / 3)));
      }
    }
    double[][] four = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.5, 0.5, 0.5}};
    Acceptability b = of(four, Weights.uniform(3), Missing.COMMON);
    assertThat(b.place(3, 1)).isCloseTo(0.25, within(5 * b.error(0.25)));
    assertThat(b.place(0, 1)).isCloseTo(0.25, within(5 * b.error(0.25)));
    assertThat(b.within(3, 2)).isEqualTo(1);
  }

  /** A point of view w with concentration c: weight 1 of two is Beta(cw, c(1 - w)). */
  @Test
  void weightsAroundAPointOfView() {
    double[][] scores = {{1, 0}, {0, 1}};
    Acceptability a = of(scores, Weights.around(new double[] {3, 1}, 4), Missing.COMMON);
    // Beta(3, 1): P(w > 1/2) = 1 - 1/8.
    assertThat(a.place(0, 1)).isCloseTo(0.875, within(5 * a.error(0.875)));
    Acceptability low = of(scores, Weights.around(new double[] {1, 1}, 1), Missing.COMMON);
    assertThat(low.place(0, 1)).isCloseTo(0.5, within(5 * low.error(0.5)));
    Acceptability firm = of(scores, Weights.around(new double[] {0.6, 0.4}, 1e6), Missing.COMMON);
    assertThat(firm.place(0, 1)).isEqualTo(1);
    assertThat(firm.centralWeights(1)).isEmpty();
  }

  @Test
  void dominanceTiesAndMissingScores() {
    double[][] scores = {{2, 2}, {1, 1}, {1, 1}};
    Acceptability a = of(scores, Weights.uniform(2), Missing.COMMON);
    assertThat(a.place(0, 1)).isEqualTo(1);
    assertThat(a.place(1, 2)).isEqualTo(1);
    assertThat(a.place(2, 2)).isEqualTo(1);
    double[][] gap = {{1, 0}, {0, Double.NaN}};
    assertThat(of(gap, Weights.uniform(2), Missing.COMMON).place(0, 1)).isEqualTo(1);
    assertThat(of(gap, Weights.uniform(2), Missing.OWN).place(0, 1)).isEqualTo(1);
    double[][] low = {{1, -3}, {0, Double.NaN}};
    // Own disciplines only: the first is ahead while w - 3(1 - w) > 0.
    Acceptability own = of(low, Weights.uniform(2), Missing.OWN);
    assertThat(own.place(0, 1)).isCloseTo(0.25, within(5 * own.error(0.25)));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {61, 62})
  void theSameSeedGivesTheSameAnswer(long seed) {
    double[][] scores = new double[12][6];
    Random random = new Random(seed);
    for (double[] row : scores) {
      for (int d = 0; d < row.length; d++) {
        row[d] = random.nextGaussian();
      }
    }
    Acceptability a = Acceptability.of(scores, Weights.uniform(6), Missing.COMMON, 2000, seed);
    Acceptability b = Acceptability.of(scores, Weights.uniform(6), Missing.COMMON, 2000, seed);
    for (int model = 0; model < 12; model++) {
      double sum = 0;
      for (int place = 1; place <= 12; place++) {
        assertThat(a.place(model, place)).isEqualTo(b.place(model, place));
        sum += a.place(model, place);
      }
      assertThat(sum).isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void whatCannotBeWeighedIsRefused() {
    double[][] gaps = {{1, Double.NaN}, {Double.NaN, 1}};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(gaps, Weights.uniform(2), Missing.COMMON));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(new double[0][], Weights.uniform(2), Missing.COMMON));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(new double[][] {{1}}, Weights.uniform(2), Missing.COMMON));
    assertThatIllegalArgumentException().isThrownBy(() -> Weights.around(new double[] {0, 0}, 10));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(new double[][] {{Double.NaN}}, Weights.uniform(1), Missing.OWN));
    assertThat(of(new double[][] {{4}}, Weights.uniform(1), Missing.OWN).place(0, 1)).isEqualTo(1);
  }

  @Test
  void theFrontIsWhatNothingBeats() {
    double[] metres = {27, 26, 28, 26, 26, 30, Double.NaN};
    double[] resistance = {8.0, 9.0, 7.5, 9.0, 9.5, 7.5, 6.0};
    assertThat(ParetoFront.of(metres, resistance, Direction.LOW, Direction.LOW))
        .containsExactly(true, true, true, true, false, false, false);
    assertThat(ParetoFront.of(new double[0], new double[0], Direction.LOW, Direction.LOW))
        .isEmpty();
    assertThat(
            ParetoFront.of(
                new double[] {0.0, -0.0}, new double[] {1, 2}, Direction.HIGH, Direction.HIGH))
        .containsExactly(false, true);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {71, 72, 73})
  void theFrontAgreesWithTheDefinition(long seed) {
    Random random = new Random(seed);
    int n = 60;
    double[] x = random.ints(n, 0, 12).mapToDouble(v -> v).toArray();
    double[] y = random.ints(n, 0, 12).mapToDouble(v -> v).toArray();
    boolean[] front = ParetoFront.of(x, y, Direction.LOW, Direction.HIGH);
    for (int i = 0; i < n; i++) {
      boolean beaten = false;
      for (int j = 0; j < n; j++) {
        beaten |= x[j] <= x[i] && y[j] >= y[i] && (x[j] < x[i] || y[j] > y[i]);
      }
      assertThat(front[i]).isEqualTo(!beaten);
    }
  }

  private static Acceptability of(double[][] scores, Weights weights, Missing missing) {
    return Acceptability.of(scores, weights, missing, DRAWS, 7);
  }
}
