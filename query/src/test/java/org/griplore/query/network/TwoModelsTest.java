package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.Tails;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A network of two models is a meta-analysis of independent differences: against metafor's results
 * and the figures printed in Viechtbauer 2010.
 */
class TwoModelsTest {

  @ParameterizedTest
  @CsvSource({"FE,NONE", "DL,DL", "REML,REML"})
  void thirteenTrialsOfColditzAndOthers(String key, VarianceMethod method) {
    ReferenceCase c = ReferenceCase.carried("colditz-1994");
    double[][] data = logRiskRatios();
    for (int i = 0; i < data[0].length; i++) {
      c.check(data[0][i], "yi_logRR", "" + (i + 1), "", 1e-12);
      c.check(data[1][i], "vi", "" + (i + 1), "", 1e-12);
    }
    // metafor stops REML at its own tolerance, hence 1e-6 beside 1e-8 for closed forms
    double relative = method == VarianceMethod.REML ? 1e-6 : 1e-8;
    check(c, key, data, method, relative);
    if (method != VarianceMethod.NONE) {
      checkPrediction(c, "t12", key, compared(data, method, PredictionRule.Q_DF), relative);
      checkPrediction(
          c, "t11", key, compared(data, method, PredictionRule.Q_DF_LESS_ONE), relative);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"constructed-no-heterogeneity", "constructed-two-estimates"})
  void edges(String name) {
    ReferenceCase c = ReferenceCase.carried(name);
    List<Map<String, String>> rows = ReferenceCase.table(name + "/data.csv");
    double[][] data = {
      rows.stream().mapToDouble(row -> number(row, "yi")).toArray(),
      rows.stream().mapToDouble(row -> number(row, "vi")).toArray()
    };
    for (VarianceMethod method : VarianceMethod.values()) {
      String key = method == VarianceMethod.NONE ? "FE" : method.name();
      check(c, key, data, method, 1e-8);
      if (method != VarianceMethod.NONE) {
        EstimatedComparison compared = compared(data, method, PredictionRule.Q_DF_LESS_ONE);
        if (rows.size() == 2) {
          assertThat(compared.prediction(0.95)).isEmpty();
        } else {
          checkPrediction(c, "t.k-2", key, compared, 1e-8);
        }
      }
    }
  }

  @Test
  void printedFiguresToTheirDigits() {
    int checked = 0;
    for (Map<String, String> row : ReferenceCase.table("colditz-1994/published.csv")) {
      String key = row.get("method");
      VarianceMethod method = key.equals("FE") ? VarianceMethod.NONE : VarianceMethod.valueOf(key);
      NetworkFit fit = fit(logRiskRatios(), method, PredictionRule.Q_DF);
      Estimate estimate = ((EstimatedComparison) fit.compare(0, 1)).estimate();
      Interval ci = estimate.interval(0.95).orElseThrow();
      double actual =
          switch (row.get("quantity")) {
            case "tau2" -> 2 * fit.tauSquared().orElseThrow();
            case "I2pct" -> 100 * fit.heterogeneity().orElseThrow().iSquared();
            case "Q" -> fit.heterogeneity().orElseThrow().q();
            case "mu" -> estimate.value();
            case "se" -> estimate.se().orElseThrow();
            case "z" -> estimate.z().orElseThrow();
            case "ci.lb" -> ci.low();
            case "ci.ub" -> ci.high();
            default -> throw new IllegalArgumentException(row.get("quantity"));
          };
      double half = 0.5 * Math.pow(10, -number(row, "decimals"));
      assertThat(actual).as("%s", row).isCloseTo(number(row, "value"), within(half + 1e-12));
      checked++;
    }
    assertThat(checked).isEqualTo(16);
  }

  private static void check(
      ReferenceCase c, String key, double[][] data, VarianceMethod method, double relative) {
    NetworkFit fit = fit(data, method, PredictionRule.Q_DF);
    EstimatedComparison compared = (EstimatedComparison) fit.compare(0, 1);
    Estimate estimate = compared.estimate();
    Interval ci = estimate.interval(0.95).orElseThrow();
    c.check(estimate.value(), "mu", key, "", relative);
    c.check(estimate.se().orElseThrow(), "se", key, "", relative);
    c.check(ci.low(), "ci.lb", key, "", relative);
    c.check(ci.high(), "ci.ub", key, "", relative);
    Heterogeneity heterogeneity = fit.heterogeneity().orElseThrow();
    c.check(heterogeneity.q(), "Q", key, "", 1e-8);
    c.check(heterogeneity.p(), "Q.p", key, "", 1e-8);
    if (c.has("z", key, "")) {
      c.check(estimate.z().orElseThrow(), "z", key, "", relative);
      // the tail far out multiplies the relative error of z by z squared
      c.check(estimate.p().orElseThrow(), "p", key, "", 20 * relative);
    }
    if (c.has("I2pct", key, "")) {
      c.check(100 * heterogeneity.iSquared(), "I2pct", key, "", relative);
    }
    if (method != VarianceMethod.NONE) {
      // the variance of a contrast is twice that of an arm
      c.check(2 * fit.tauSquared().orElseThrow(), "tau2", key, "", relative);
      double half = Tails.normal(0.95) * compared.predictionSd().orElseThrow();
      c.check(compared.difference() - half, "pi.lb.normal", key, "", relative);
      c.check(compared.difference() + half, "pi.ub.normal", key, "", relative);
    }
  }

  private static void checkPrediction(
      ReferenceCase c, String quantile, String key, EstimatedComparison compared, double relative) {
    Interval next = compared.prediction(0.95).orElseThrow();
    c.check(next.low(), "pi.lb." + quantile, key, "", relative);
    c.check(next.high(), "pi.ub." + quantile, key, "", relative);
  }

  private static EstimatedComparison compared(
      double[][] data, VarianceMethod method, PredictionRule rule) {
    return (EstimatedComparison) fit(data, method, rule).compare(0, 1);
  }

  /** One test an estimate, its variance shared by the arms of the two models. */
  private static NetworkFit fit(double[][] data, VarianceMethod method, PredictionRule rule) {
    ArmList arms = new ArmList();
    for (int test = 0; test < data[0].length; test++) {
      arms.add(test, 0, data[0][test], data[1][test] / 2);
      arms.add(test, 1, 0, data[1][test] / 2);
    }
    return NetworkFitter.fit(
        arms.build(), FitOptions.of(method).conventional().withPredictionRule(rule));
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
