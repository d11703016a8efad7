package org.griplore.query.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.griplore.query.statistics.Tails;
import org.junit.jupiter.api.Test;

class FieldPlacesTest {
  private static Levels apart(double... mean) {
    double[][] identity = new double[mean.length][mean.length];
    for (int i = 0; i < mean.length; i++) {
      identity[i][i] = 1;
    }
    return new Levels(mean, identity).lessMean();
  }

  @Test
  void amongEqualsPlacesAreThoseOfChance() {
    FieldPlaces places = FieldPlaces.of(apart(0, 0, 0, 0, 0), 3, 1);
    for (int i = 0; i < 5; i++) {
      assertThat(places.expected()[i]).isCloseTo(3, within(1e-12));
      assertThat(places.top()[i]).isCloseTo(3 / 5.0, within(4 * 0.0036));
    }
    assertThat(Arrays.stream(places.top()).sum()).isCloseTo(3, within(1e-9));
  }

  /** The better of two by one standard deviation each: P = Phi(1/sqrt 2). */
  @Test
  void theChanceOfTwoIsThatOfTheirDifference() {
    FieldPlaces places = FieldPlaces.of(apart(1, 0), 1, 7);
    double behind = Tails.normalAbove(1 / Math.sqrt(2));
    assertThat(places.expected()[0]).isCloseTo(1 + behind, within(1e-12));
    assertThat(places.top()[0]).isCloseTo(1 - behind, within(4 * 0.0036));
    assertThat(FieldPlaces.of(apart(1, 0), 1, 7).top()).isEqualTo(places.top());
  }
}
