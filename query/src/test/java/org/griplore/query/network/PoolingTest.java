package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.griplore.query.statistics.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pooling against metafor's results and the figures printed in Viechtbauer 2010. */
class PoolingTest {

  @ParameterizedTest
  @CsvSource({"FE,NONE", "DL,DL", "REML,REML"})
  void thirteenTrialsOfColditzAndOthers(String key, VarianceMethod method) {
    ReferenceCase c = ReferenceCase.carried("colditz-1994");
    double[][] data = logRiskRatios();
    for (int i = 0; i < data[0].length; i++) {
      c.check(data[0][i], "yi_logRR", "" + (i + 1), "", 1e-12);
      c.check(data[1][i], "vi", "" + (i + 1), "", 1e-12);
    }
    Pooled pooled = Pooling.pool(data[0], data[1], method);
    // metafor stops REML at its own tolerance, hence 1e-6 beside 1e-8 for closed forms
    double relative = method == VarianceMethod.REML ? 1e-6 : 1e-8;
    checkCommon(c, key, pooled, relative);
    if (method != VarianceMethod.NONE) {
      c.check(pooled.betweenSe().orElseThrow(), "tau2.se", key, "", relative);
      for (int df : new int[] {11, 12}) {
        Interval t = pooled.prediction(0.95, df).orElseThrow();
        c.check(t.low(), "pi.lb.t" + df, key, "", relative);
        c.check(t.high(), "pi.ub.t" + df, key, "", relative);
      }
      checkScatter(c, key, pooled, relative);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"constructed-no-heterogeneity", "constructed-two-estimates"})
  void edges(String name) {
    ReferenceCase c = ReferenceCase.carried(name);
    List<Map<String, String>> rows = ReferenceCase.table(name + "/data.csv");
    double[] y = rows.stream().mapToDouble(r -> Double.parseDouble(r.get("yi"))).toArray();
    double[] v = rows.stream().mapToDouble(r -> Double.parseDouble(r.get("vi"))).toArray();
    for (VarianceMethod method : VarianceMethod.values()) {
      String key = method == VarianceMethod.NONE ? "FE" : method.name();
      Pooled pooled = Pooling.pool(y, v, method);
      checkCommon(c, key, pooled, 1e-8);
      if (method != VarianceMethod.NONE) {
        checkScatter(c, key, pooled, 1e-8);
        if (y.length == 2) {
          assertThat(pooled.prediction(0.95, 0)).isEmpty();
        } else {
          Interval t = pooled.prediction(0.95, y.length - 2).orElseThrow();
          c.check(t.low(), "pi.lb.t.k-2", key, "", 1e-8);
          c.check(t.high(), "pi.ub.t.k-2", key, "", 1e-8);
        }
      }
    }
  }

  private static void checkCommon(ReferenceCase c, String key, Pooled pooled, double relative) {
    Estimate estimate = pooled.estimate();
    Interval ci = estimate.interval(0.95).orElseThrow();
    c.check(estimate.value(), "mu", key, "", relative);
    c.check(estimate.se().orElseThrow(), "se", key, "", relative);
    c.check(ci.low(), "ci.lb", key, "", relative);
    c.check(ci.high(), "ci.ub", key, "", relative);
    c.check(pooled.heterogeneity().q(), "Q", key, "", 1e-8);
    c.check(pooled.heterogeneity().p(), "Q.p", key, "", 1e-8);
    if (c.has("z", key, "")) {
      c.check(estimate.z().orElseThrow(), "z", key, "", relative);
      // the tail far out multiplies the relative error of z by z squared
      c.check(estimate.p().orElseThrow(), "p", key, "", 20 * relative);
    }
    if (c.has("tau2", key, "")) {
      c.check(pooled.between(), "tau2", key, "", relative);
      c.check(100 * pooled.iSquared(), "I2pct", key, "", relative);
      Interval normal = pooled.predictionNormal(0.95);
      c.check(normal.low(), "pi.lb.normal", key, "", relative);
      c.check(normal.high(), "pi.ub.normal", key, "", relative);
    }
  }

  private static void checkScatter(ReferenceCase c, String key, Pooled pooled, double relative) {
    Estimate scatter = pooled.scatterEstimate().orElseThrow();
    Interval ci = scatter.interval(0.95).orElseThrow();
    c.check(scatter.se().orElseThrow(), "hksj.se", key, "", relative);
    c.check(ci.low(), "hksj.ci.lb", key, "", relative);
    c.check(ci.high(), "hksj.ci.ub", key, "", relative);
  }

  @Test
  void printedFiguresToTheirDigits() {
    double[][] data = logRiskRatios();
    int checked = 0;
    for (Map<String, String> row : ReferenceCase.table("colditz-1994/published.csv")) {
      VarianceMethod method =
          row.get("method").equals("FE")
              ? VarianceMethod.NONE
              : VarianceMethod.valueOf(row.get("method"));
      Pooled pooled = Pooling.pool(data[0], data[1], method);
      Interval ci = pooled.estimate().interval(0.95).orElseThrow();
      Double actual =
          switch (row.get("quantity")) {
            case "tau2" -> pooled.between();
            case "tau2.se" -> pooled.betweenSe().orElseThrow();
            case "I2pct" -> 100 * pooled.iSquared();
            case "Q" -> pooled.heterogeneity().q();
            case "mu" -> pooled.estimate().value();
            case "se" -> pooled.estimate().se().orElseThrow();
            case "z" -> pooled.estimate().z().orElseThrow();
            case "ci.lb" -> ci.low();
            case "ci.ub" -> ci.high();
            default -> throw new IllegalArgumentException(row.get("quantity"));
          };
      assertThat(actual)
          .as("%s", row)
          .isCloseTo(
              Double.parseDouble(row.get("value")),
              within(0.5 * Math.pow(10, -Integer.parseInt(row.get("decimals"))) + 1e-12));
      checked++;
    }
    assertThat(checked).isGreaterThan(15);
  }

  @Test
  void oneEstimateIsItself() {
    Pooled pooled = Pooling.pool(new double[] {0.3}, new double[] {0.04}, VarianceMethod.REML);
    assertThat(pooled.estimate().value()).isEqualTo(0.3);
    assertThat(pooled.estimate().se().orElseThrow()).isCloseTo(0.2, within(1e-15));
    assertThat(pooled.between()).isZero();
    assertThat(pooled.betweenSe()).isEmpty();
    assertThat(pooled.scatterEstimate()).isEmpty();
    assertThat(pooled.iSquared()).isZero();
  }

  @Test
  void aVarianceOfZeroIsRefused() {
    assertThatThrownBy(
            () -> Pooling.pool(new double[] {1, 2}, new double[] {0.1, 0}, VarianceMethod.DL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Estimate 1");
  }

  private static double[][] logRiskRatios() {
    List<Map<String, String>> rows = ReferenceCase.table("colditz-1994/data.csv");
    double[][] out = new double[2][rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      double a = number(rows.get(i), "tpos");
      double b = number(rows.get(i), "tneg");
      double c = number(rows.get(i), "cpos");
      double d = number(rows.get(i), "cneg");
      out[0][i] = Math.log(a / (a + b)) - Math.log(c / (c + d));
      out[1][i] = 1 / a - 1 / (a + b) + 1 / c - 1 / (c + d);
    }
    return out;
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
