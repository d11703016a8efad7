package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class StepPaceTest {
  /** Equal weights: the textbook line through the origin, sum(xy) / sum(x^2), by arithmetic. */
  @Test
  void equalWeightsGiveTheLineThroughTheOrigin() {
    double[] years = {2, 3, 4};
    double[] steps = {2.2, 2.7, 4.4};
    double[] ses = {0.3, 0.3, 0.3};
    StepPace pace = StepPace.of(steps, ses, years, 0.4).orElseThrow();
    assertThat(pace.pace()).isCloseTo((4.4 + 8.1 + 17.6) / 29, within(1e-12));
    assertThat(pace.se()).isCloseTo(0.5 / Math.sqrt(29), within(1e-12));
    assertThat(pace.steps()).isEqualTo(3);
  }

  @Test
  void aStepKnownWellCountsForMore() {
    StepPace pace =
        StepPace.of(new double[] {1, 1, 3}, new double[] {9, 9, 0.01}, new double[] {1, 1, 1}, 0)
            .orElseThrow();
    assertThat(pace.pace()).isCloseTo(3, within(0.001));
  }

  @Test
  void tooFewStepsSayNothingAndBadOnesAreRefused() {
    assertThat(StepPace.of(new double[] {1, 2}, new double[] {1, 1}, new double[] {1, 1}, 0))
        .isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StepPace.of(new double[3], new double[3], new double[3], 0));
  }

  /** Seeded: intervals cover a pace of 1.2 a year in 95 of 100 simulated archives, about. */
  @Test
  void intervalsCoverTheTruth() {
    Random random = new Random(42);
    int covered = 0;
    for (int trial = 0; trial < 2000; trial++) {
      double[] steps = new double[12];
      double[] ses = new double[12];
      double[] years = new double[12];
      for (int i = 0; i < 12; i++) {
        years[i] = 2 + random.nextInt(5);
        ses[i] = 0.3 + random.nextDouble();
        steps[i] = 1.2 * years[i] + 0.8 * random.nextGaussian() + ses[i] * random.nextGaussian();
      }
      StepPace pace = StepPace.of(steps, ses, years, 0.8).orElseThrow();
      covered += pace.interval(0.95).contains(1.2) ? 1 : 0;
    }
    assertThat(covered / 2000.0).isBetween(0.93, 0.97);
  }
}
