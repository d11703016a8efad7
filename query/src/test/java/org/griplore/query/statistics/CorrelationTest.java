package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.griplore.query.statistics.Closeness.assertPrinted;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.Arrays;
import java.util.Random;
import org.griplore.query.statistics.ErrorCorrectedCorrelation.Estimates;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CorrelationTest {
  /** Bland and Altman 1995, BMJ 310:446: pH and PaCO2 in eight subjects. */
  @Test
  void withinSubjects() {
    ReferenceCase bland = ReferenceCase.beside("h1_bland1995");
    int[] subject = Arrays.stream(bland.column("Subject")).mapToInt(s -> (int) s).toArray();
    double[] ph = bland.column("pH");
    double[] pressure = bland.column("PaCO2");
    WithinGroupCorrelation within = WithinGroupCorrelation.of(subject, ph, pressure).orElseThrow();
    Interval interval = within.interval(0.95).orElseThrow();
    int checked = 0;
    for (ReferenceCase.Expected e : bland.expected()) {
      double actual =
          switch (e.quantity()) {
            case "rmcorr.r", "centred.pearson" -> within.r();
            case "df" -> within.df();
            case "p" -> within.p();
            case "ci.lb.rmcorr", "ci.lb.fisher.se=1/sqrt(37)" -> interval.low();
            case "ci.ub.rmcorr", "ci.ub.fisher.se=1/sqrt(37)" -> interval.high();
            case "slope" -> within.slope();
            case "slope.se" -> within.slopeSe();
            case "F" -> within.f().orElseThrow();
            default -> Double.NaN; // other ways of counting, not offered
          };
      if (!Double.isNaN(actual)) {
        assertRelative(e.toString(), actual, e.value(), 1e-10);
        checked++;
      }
    }
    assertThat(checked).isEqualTo(11);
    for (ReferenceCase.Expected e : bland.published()) {
      double actual = e.quantity().equals("p") ? within.p() : within.r();
      assertPrinted(e.quantity(), actual, e.value(), e.decimals());
    }
  }

  @Test
  void withinGroupsAConstantOfAGroupChangesNothing() {
    int[] group = {0, 0, 0, 1, 1, 1, 2};
    double[] x = {1, 2, 3, 2, 4, 3, 9};
    double[] y = {2, 4, 3, 1, 5, 3, 7};
    WithinGroupCorrelation plain = WithinGroupCorrelation.of(group, x, y).orElseThrow();
    double[] moved = y.clone();
    for (int i = 0; i < 3; i++) {
      moved[i] += 1000;
    }
    WithinGroupCorrelation shifted = WithinGroupCorrelation.of(group, x, moved).orElseThrow();
    assertRelative("r", shifted.r(), plain.r(), 1e-10);
    assertThat(plain.groups()).isEqualTo(2);
    assertThat(plain.count()).isEqualTo(6);
    assertThat(plain.df()).isEqualTo(3);
  }

  @Test
  void tooLittleToCorrelate() {
    int[] two = {0, 0};
    assertThat(WithinGroupCorrelation.of(two, new double[] {1, 2}, new double[] {1, 2})).isEmpty();
    assertThat(WithinGroupCorrelation.of(new int[0], new double[0], new double[0])).isEmpty();
    int[] three = {0, 0, 0};
    double[] rising = {1, 2, 3};
    double[] flat = {0.1, 0.1, 0.1};
    assertThat(WithinGroupCorrelation.of(three, rising, flat)).isEmpty();
    WithinGroupCorrelation perfect = WithinGroupCorrelation.of(three, rising, rising).orElseThrow();
    assertThat(perfect.r()).isEqualTo(1);
    assertThat(perfect.p()).isZero();
    assertThat(perfect.interval(0.95)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> WithinGroupCorrelation.of(three, rising, new double[] {1, Double.NaN, 2}));
  }

  /** Without error it is Pearson's; with error of half the spread it is Spearman's correction. */
  @Test
  void correctionTakesOffWhatErrorMakes() {
    double[] x = {1, 2, 3, 4, 5, 6};
    double[] y = {2, 1, 4, 3, 6, 5};
    double[] none = new double[6];
    var plain =
        ErrorCorrectedCorrelation.of(Estimates.independent(x, none, y, none), 0.95).orElseThrow();
    assertRelative("Pearson", plain.r().orElseThrow(), 29.0 / 35, 1e-14);
    assertThat(plain.r()).hasValue(plain.uncorrected());
    assertThat(plain.xReliability()).isEqualTo(1);
    double[] se = new double[6];
    Arrays.fill(se, Math.sqrt(3.5 / 10)); // variance of x is 3.5: a tenth of it
    var corrected =
        ErrorCorrectedCorrelation.of(Estimates.independent(x, se, y, se), 0.95).orElseThrow();
    assertRelative("corrected", corrected.r().orElseThrow(), 29.0 / 35 / 0.9, 1e-12);
    assertRelative("reliability", corrected.xReliability(), 0.9, 1e-12);
    double[] shared = new double[6];
    Arrays.fill(shared, 0.1);
    var withShared =
        ErrorCorrectedCorrelation.of(
                new Estimates(x, none, y, none, shared, new double[] {0, 0, 0.1}), 0.95)
            .orElseThrow();
    assertRelative(
        "error common to all models", withShared.r().orElseThrow(), plain.r().orElseThrow(), 1e-12);
  }

  /**
   * Archives with a stated correlation of true effects, errors known: the corrected estimate is
   * right on average where errors are as large as half the spread, and the interval holds the truth
   * about as often as it says, for few steps and many, for sure ones and vague ones.
   */
  @Tag("simulation")
  @ParameterizedTest(name = "{0} steps, correlation {1}, reliability {2}")
  @CsvSource({
    "5, 0, 0.7",
    "8, 0, 0.7",
    "8, -0.6, 0.7",
    "8, -0.9, 0.9",
    "8, -0.6, 0.5",
    "24, 0, 0.7",
    "24, -0.6, 0.7",
    "24, -0.9, 0.9",
    "24, -0.6, 0.5",
    "60, 0.6, 0.7",
    "60, -0.9, 0.7"
  })
  void theCorrectedIntervalHolds(int steps, double truth, double reliability) {
    Random random = new Random(1904 + steps);
    int archives = 1000;
    double sum = 0;
    double raw = 0;
    int covered = 0;
    int estimated = 0;
    double error = Math.sqrt((1 - reliability) / reliability);
    for (int archive = 0; archive < archives; archive++) {
      double[] x = new double[steps];
      double[] y = new double[steps];
      double[] se = new double[steps];
      for (int i = 0; i < steps; i++) {
        double u = random.nextGaussian();
        double v = truth * u + Math.sqrt(1 - truth * truth) * random.nextGaussian();
        se[i] = error * (0.7 + 0.6 * random.nextDouble());
        x[i] = u + se[i] * random.nextGaussian();
        y[i] = v + se[i] * random.nextGaussian();
      }
      ErrorCorrectedCorrelation r =
          ErrorCorrectedCorrelation.of(Estimates.independent(x, se, y, se), 0.95).orElseThrow();
      raw += r.uncorrected() / archives;
      sum += r.r().orElse(0);
      estimated += r.r().isPresent() ? 1 : 0;
      covered += r.interval().contains(truth) ? 1 : 0;
    }
    assertThat((double) covered / archives).isBetween(0.93, 0.99);
    if (steps == 60) {
      assertThat(sum / estimated).isCloseTo(truth, within(0.03));
      assertThat(Math.abs(raw)).isLessThan(Math.abs(truth) - 0.1);
    }
  }

  @Test
  void errorLargerThanTheSpreadGivesNothing() {
    double[] x = {1, 2, 3, 4};
    double[] large = {9, 9, 9, 9};
    double[] small = {0.1, 0.1, 0.1, 0.1};
    ErrorCorrectedCorrelation untold =
        ErrorCorrectedCorrelation.of(Estimates.independent(x, large, x, small), 0.95).orElseThrow();
    assertThat(untold.r()).isEmpty();
    assertThat(untold.interval()).isEqualTo(new Interval(-1, 1));
    double[] still = new double[4];
    assertThat(ErrorCorrectedCorrelation.of(Estimates.independent(x, small, still, small), 0.95))
        .isEmpty();
    double[] few = {1, 2, 3};
    assertThat(
            ErrorCorrectedCorrelation.of(
                Estimates.independent(few, new double[3], few, new double[3]), 0.95))
        .isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> Estimates.independent(x, few, x, small));
  }
}
