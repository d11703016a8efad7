package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OffsetByGroupTest {
  /** Two groups of two, errors of one: means 2 and 4 with variance one half each, by hand. */
  @Test
  void groupsAreDrawnTowardsTheirMean() {
    OffsetByGroup found =
        OffsetByGroup.of(
                new double[] {1.5, 2.5, 3.5, 4.5},
                new double[] {1, 1, 1, 1},
                new int[] {0, 0, 1, 1})
            .orElseThrow();
    // between: variance of the means is 2, less a half that is error
    assertThat(found.mean().value()).isCloseTo(3, within(1e-9));
    assertThat(found.mean().se()).isCloseTo(1, within(1e-6));
    assertThat(found.mean().df()).isEqualTo(1);
    assertThat(found.group(0).value()).isCloseTo(3 - 0.75, within(1e-6));
    assertThat(found.group(1).value()).isCloseTo(3 + 0.75, within(1e-6));
    assertThat(found.group(0).se()).isCloseTo(Math.sqrt(0.75 * 0.5 + 0.0625), within(1e-6));
  }

  @Test
  void oneGroupIsItsOwnMean() {
    OffsetByGroup found =
        OffsetByGroup.of(new double[] {1, 3}, new double[] {1, 1}, new int[] {0, 0}).orElseThrow();
    assertThat(found.mean()).isEqualTo(found.group(0));
    // by moments (2 - 1)/(2 - 1) = 1 varies inside: variance 2 each, se of the mean 1
    assertThat(found.mean().value()).isEqualTo(2);
    assertThat(found.mean().se()).isCloseTo(1, within(1e-12));
    assertThat(OffsetByGroup.of(new double[1], new double[] {1}, new int[1])).isEmpty();
  }

  /** Stated flattery: the intervals of the mean and of each maker hold it as often as they say. */
  @Tag("simulation")
  @ParameterizedTest(name = "{0} makers, {1} steps each, between {2}, inside {3}")
  @CsvSource({
    "3, 3, 0.02, 0.02",
    "6, 3, 0.02, 0.02",
    "6, 3, 0, 0",
    "12, 4, 0.03, 0.01",
    "6, 1, 0.02, 0.02"
  })
  void statedOffsetsAreHeld(int makers, int steps, double between, double inside) {
    Random random = new Random(21);
    int archives = 1500;
    double all = 0;
    double each = 0;
    double sum = 0;
    for (int archive = 0; archive < archives; archive++) {
      int n = makers * steps;
      double[] truth = new double[makers];
      double[] d = new double[n];
      double[] v = new double[n];
      int[] group = new int[n];
      for (int i = 0; i < n; i++) {
        group[i] = i % makers;
        truth[group[i]] = i < makers ? 0.02 + between * random.nextGaussian() : truth[group[i]];
        double se = 0.01 + 0.02 * random.nextDouble();
        v[i] = se * se;
        d[i] = truth[group[i]] + inside * random.nextGaussian() + se * random.nextGaussian();
      }
      OffsetByGroup found = OffsetByGroup.of(d, v, group).orElseThrow();
      sum += found.mean().value() / archives;
      all += found.mean().interval(0.95).contains(0.02) ? 1.0 / archives : 0;
      for (int g = 0; g < makers; g++) {
        each += found.group(g).interval(0.95).contains(truth[g]) ? 1.0 / archives / makers : 0;
      }
    }
    assertThat(sum).isCloseTo(0.02, within(0.002));
    assertThat(all).as("over all makers").isBetween(0.92, 1.0);
    assertThat(each).as("of each maker").isBetween(0.92, 1.0);
  }
}
