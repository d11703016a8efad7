package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.griplore.query.statistics.Closeness.assertPrinted;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.griplore.query.statistics.ErrorCorrectedCorrelation.Estimates;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
        ErrorCorrectedCorrelation.of(Estimates.independent(x, none, y, none), 0.95, 500, 1)
            .orElseThrow();
    assertRelative("Pearson", plain.r(), 29.0 / 35, 1e-14);
    assertThat(plain.r()).isEqualTo(plain.uncorrected());
    assertThat(plain.xReliability()).isEqualTo(1);
    double[] se = new double[6];
    Arrays.fill(se, Math.sqrt(3.5 / 10)); // variance of x is 3.5: a tenth of it
    var corrected =
        ErrorCorrectedCorrelation.of(Estimates.independent(x, se, y, se), 0.95, 500, 1)
            .orElseThrow();
    assertRelative("corrected", corrected.r(), 29.0 / 35 / 0.9, 1e-12);
    assertRelative("reliability", corrected.xReliability(), 0.9, 1e-12);
    double[] shared = new double[6];
    Arrays.fill(shared, 0.1);
    var withShared =
        ErrorCorrectedCorrelation.of(
                new Estimates(x, none, y, none, shared, new double[] {0, 0, 0.1}), 0.95, 10, 1)
            .orElseThrow();
    assertRelative("error common to all models", withShared.r(), plain.r(), 1e-12);
  }

  /**
   * 300 archives of 40 models with a stated correlation of 0.6 and errors as large as the spread.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41})
  void statedCorrelationIsFoundOnAverage(long seed) {
    Random random = new Random(seed);
    int archives = 300;
    int models = 40;
    double sum = 0;
    double raw = 0;
    int covered = 0;
    int given = 0;
    for (int archive = 0; archive < archives; archive++) {
      double[] x = new double[models];
      double[] y = new double[models];
      double[] se = new double[models];
      for (int i = 0; i < models; i++) {
        double u = random.nextGaussian();
        double v = 0.6 * u + 0.8 * random.nextGaussian();
        se[i] = 0.4 + 0.4 * random.nextDouble();
        x[i] = u + se[i] * random.nextGaussian();
        y[i] = v + se[i] * random.nextGaussian();
      }
      Optional<ErrorCorrectedCorrelation> r =
          ErrorCorrectedCorrelation.of(Estimates.independent(x, se, y, se), 0.95, 400, archive);
      sum += r.orElseThrow().r();
      raw += r.orElseThrow().uncorrected();
      if (r.orElseThrow().interval().isPresent()) {
        given++;
        covered += r.orElseThrow().interval().orElseThrow().contains(0.6) ? 1 : 0;
      }
    }
    assertThat(sum / archives).isCloseTo(0.6, within(0.03));
    assertThat(raw / archives).isLessThan(0.48);
    assertThat(given).isGreaterThan(280);
    assertThat((double) covered / given).isBetween(0.89, 0.99);
  }

  @Test
  void errorLargerThanTheSpreadGivesNothing() {
    double[] x = {1, 2, 3, 4};
    double[] large = {9, 9, 9, 9};
    double[] small = {0.1, 0.1, 0.1, 0.1};
    assertThat(ErrorCorrectedCorrelation.of(Estimates.independent(x, large, x, small), 0.95, 10, 1))
        .isEmpty();
    double[] few = {1, 2, 3};
    assertThat(
            ErrorCorrectedCorrelation.of(
                Estimates.independent(few, new double[3], few, new double[3]), 0.95, 10, 1))
        .isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> Estimates.independent(x, few, x, small));
  }
}
