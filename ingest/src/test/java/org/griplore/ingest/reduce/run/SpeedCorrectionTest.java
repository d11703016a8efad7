package org.griplore.ingest.reduce.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.reduce.Improvement;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpeedCorrectionTest {
  /** Arithmetic from s = v^2 / (2 a); the correction for small deviations as in SAE J299. */
  @Test
  void aFullStopIsScaledByTheSquareOfTheSpeed() {
    assertThat(SpeedCorrection.fullStop(38.40, 101.6, 100)).isCloseTo(37.20, within(0.005));
    assertThat(SpeedCorrection.fullStop(38.40, 98.7, 100)).isCloseTo(39.42, within(0.005));
  }

  /** Arithmetic: 100 km/h at 9.8 m/s2. */
  @Test
  void distanceOfAConstantDeceleration() {
    assertThat(SpeedCorrection.distance(new Window(100, 0), 9.8)).isCloseTo(39.37, within(0.005));
  }

  /** Arithmetic from UN Regulation No. 117 annex 5's AD = |Sf^2 - Si^2| / (2 d): 231.48 / d. */
  @Test
  void meanDecelerationBetween80And20() {
    assertThat(SpeedCorrection.deceleration(80, 20, 1)).isCloseTo(231.48, within(0.005));
    assertThat(SpeedCorrection.deceleration(80, 20, 34.70)).isCloseTo(6.6709, within(5e-5));
    assertThat(SpeedCorrection.deceleration(20, 80, 34.70)).isCloseTo(6.6709, within(5e-5));
  }

  /**
   * 28 m against 46.5 m from 80 km/h: a transport association's label page says about 50.5 km/h.
   */
  @Test
  void residualSpeed() {
    assertThat(SpeedCorrection.residualSpeed(80, 28, 46.5)).isCloseTo(50.46, within(0.005));
    assertThat(SpeedCorrection.residualSpeed(80, 28, 28)).isZero();
    assertThatThrownBy(() -> SpeedCorrection.residualSpeed(80, 28, 27))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("27.0 m")
        .hasMessageContaining("not shorter than 28.0 m");
  }

  @Test
  void aWindowIsScaledByTheDifferenceOfSquares() {
    Window nominal = new Window(80, 20);
    double ad = 231.48;
    double run = (82 * 82 - 19 * 19) / (3.6 * 3.6) / (2 * ad);
    double wanted = (80 * 80 - 20 * 20) / (3.6 * 3.6) / (2 * ad);
    assertThat(SpeedCorrection.toNominal(run, 82, 19, nominal)).isCloseTo(wanted, within(1e-12));
    assertThat(SpeedCorrection.deviation(82, 19, nominal))
        .isCloseTo((82 * 82 - 19 * 19) / 6000.0 - 1, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-38.4, 0, Double.NaN, Double.POSITIVE_INFINITY})
  void aDistanceIsAboveZero(double distance) {
    assertThatThrownBy(() -> SpeedCorrection.deceleration(80, 20, distance))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("distance " + distance);
  }

  @Test
  void speedsDiffer() {
    assertThatThrownBy(() -> SpeedCorrection.deceleration(80, 80, 30))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("two different speeds");
    assertThatThrownBy(() -> new Window(20, 80)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> SpeedCorrection.deceleration(-80, 20, 30)).isInstanceOf(Refusal.class);
  }

  /** Arithmetic from Directive 71/320/EEC annex II: (80^2 - 10^2) / (25.92 x 33). */
  @Test
  void fullyDevelopedDeceleration() {
    assertThat(FullyDevelopedDeceleration.of(100, 14.0, 47.0)).isCloseTo(7.365, within(5e-4));
  }

  @Test
  void fullyDevelopedDecelerationOfATrace() {
    // constant 8 m/s2 from 100 km/h after 5 m of build-up at full speed
    double a = 8;
    List<FullyDevelopedDeceleration.Point> trace = new ArrayList<>();
    trace.add(new FullyDevelopedDeceleration.Point(100, 0));
    trace.add(new FullyDevelopedDeceleration.Point(100, 5));
    for (double v : new double[] {93, 71, 44, 21, 4}) {
      double s = 5 + (100 * 100 - v * v) / (3.6 * 3.6) / (2 * a);
      trace.add(new FullyDevelopedDeceleration.Point(v, s));
    }
    assertThat(FullyDevelopedDeceleration.of(trace)).isCloseTo(a, within(1e-12));
    assertThatThrownBy(() -> FullyDevelopedDeceleration.of(trace.subList(0, 5)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("a trace down to 10.0 km/h");
    assertThatThrownBy(
            () ->
                FullyDevelopedDeceleration.of(
                    List.of(
                        new FullyDevelopedDeceleration.Point(100, 0),
                        new FullyDevelopedDeceleration.Point(101, 5))))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("point 2");
  }

  /** Arithmetic: 10 % more grip is 9.09 % less distance. */
  @Test
  void betterOfWhat() {
    Improvement better = new Improvement(1.1);
    assertThat(better.distancePercent()).isCloseTo(9.09, within(0.005));
    assertThat(better.words())
        .isEqualTo("10.0 % more grip (deceleration), which is 9.1 % less distance");
    assertThat(Improvement.ofDistances(40, 36).words())
        .isEqualTo("10.0 % less grip (deceleration), which is 11.1 % more distance");
    assertThatThrownBy(() -> Improvement.ofDistances(0, 36)).isInstanceOf(Refusal.class);
  }
}
