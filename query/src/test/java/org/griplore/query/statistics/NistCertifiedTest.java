package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.griplore.query.statistics.Closeness.assertDigits;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.griplore.query.statistics.ClusteredRegression.Errors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * NIST/ITL Statistical Reference Datasets. Digits asked for are those the numbers as doubles still
 * hold: 10000000.2 read as a double is off by 2e-10, which leaves a spread of 0.1 eight digits.
 */
class NistCertifiedTest {
  private static final ReferenceCase CERTIFIED = ReferenceCase.carried("nist-strd");

  private static double certified(String file, String quantity, String set) {
    return CERTIFIED.figures(file).stream()
        .filter(e -> e.quantity().equals(quantity) && e.key1().equals(set))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** NumAcc2, 3 and 4 are defined by construction: level + 0.2, then + 0.1 and + 0.3 in turn. */
  @ParameterizedTest
  @CsvSource({"NumAcc2, 1.0, 14, 14", "NumAcc3, 1000000.0, 15, 9", "NumAcc4, 10000000.0, 15, 8"})
  void meanAndSpreadOfConstructedSets(String set, double level, double ofMean, double ofSpread) {
    double[] values = new double[1001];
    for (int i = 0; i < values.length; i++) {
      int tenths = i == 0 ? 2 : i % 2 == 1 ? 1 : 3;
      values[i] = Double.parseDouble(String.valueOf((long) level) + "." + tenths);
    }
    Summary summary = Summary.of(values);
    assertDigits(set, summary.mean(), certified("i1_univariate.csv", "mean", set), ofMean);
    assertDigits(set, summary.sd(), certified("i1_univariate.csv", "sd", set), ofSpread);
    assertRelative(set + " as doubles", summary.sd(), exactSd(values), 1e-15);
  }

  private static double exactSd(double[] values) {
    MathContext digits = new MathContext(60);
    BigDecimal sum = BigDecimal.ZERO;
    for (double value : values) {
      sum = sum.add(new BigDecimal(value));
    }
    BigDecimal mean = sum.divide(BigDecimal.valueOf(values.length), digits);
    BigDecimal squares = BigDecimal.ZERO;
    for (double value : values) {
      squares = squares.add(new BigDecimal(value).subtract(mean).pow(2));
    }
    return squares
        .divide(BigDecimal.valueOf(values.length - 1L), digits)
        .sqrt(digits)
        .doubleValue();
  }

  @Test
  void meanAndSpreadOfMichelso() {
    Summary summary = Summary.of(ReferenceCase.beside("i1_Michelso").column("y"));
    assertThat(summary.count()).isEqualTo(100);
    assertDigits("mean", summary.mean(), certified("i1_univariate.csv", "mean", "Michelso"), 14);
    assertDigits("sd", summary.sd(), certified("i1_univariate.csv", "sd", "Michelso"), 12);
  }

  @ParameterizedTest
  @CsvSource({"SiRstv, 12", "AtmWtAg, 9"})
  void oneWayOfMeasuredSets(String set, double digits) {
    ReferenceCase data = ReferenceCase.beside("i2_" + set);
    Map<String, List<Double>> groups = new LinkedHashMap<>();
    for (Map<String, String> row : data.data()) {
      groups
          .computeIfAbsent(row.get("group"), g -> new ArrayList<>())
          .add(Double.parseDouble(row.get("y")));
    }
    double[][] values =
        groups.values().stream()
            .map(group -> group.stream().mapToDouble(v -> v).toArray())
            .toArray(double[][]::new);
    assertOneWay(set, OneWay.of(values), digits);
  }

  /**
   * The SmLs sets are defined by construction: nine groups centred on level + 0.4, 0.3, 0.2
   * (twice), 0.5, 0.6 ... with values 0.1 to either side in turn.
   */
  @ParameterizedTest
  @CsvSource({
    "SmLs01, 1, 21, 13", "SmLs02, 1, 201, 13", "SmLs03, 1, 2001, 13",
    "SmLs04, 1000000, 21, 9", "SmLs05, 1000000, 201, 9", "SmLs06, 1000000, 2001, 9"
  })
  void oneWayOfConstructedSets(String set, long level, int size, double digits) {
    int[] centre = {4, 3, 5, 3, 5, 3, 5, 3, 5};
    double[][] values = new double[9][size];
    for (int g = 0; g < 9; g++) {
      for (int i = 0; i < size; i++) {
        int tenths = i == 0 ? centre[g] : i % 2 == 1 ? centre[g] - 1 : centre[g] + 1;
        values[g][i] = Double.parseDouble(level + "." + tenths);
      }
    }
    assertOneWay(set, OneWay.of(values), digits);
  }

  private static void assertOneWay(String set, OneWay oneWay, double digits) {
    String file = "i2_anova.csv";
    assertDigits(set + " F", oneWay.f(), certified(file, "F", set), digits);
    assertDigits(set, oneWay.between(), certified(file, "ss.between", set), digits);
    assertDigits(set, oneWay.within(), certified(file, "ss.within", set), digits);
    assertDigits(set, oneWay.explained(), certified(file, "R2", set), digits);
    assertDigits(set, oneWay.residualSd(), certified(file, "resid.sd", set), digits);
  }

  /** Longley 1967: six columns that nearly follow from one another. */
  @Test
  void longleyToElevenDigits() {
    List<Map<String, String>> rows = ReferenceCase.carried("longley-1967").data();
    double[] y = rows.stream().mapToDouble(row -> Double.parseDouble(row.get("y"))).toArray();
    double[][] x =
        rows.stream()
            .map(
                row ->
                    IntStream.rangeClosed(1, 6)
                        .mapToDouble(j -> Double.parseDouble(row.get("x" + j)))
                        .toArray())
            .toArray(double[][]::new);
    ClusteredRegression fit = ClusteredRegression.of(y, x, null, null).orElseThrow();
    int checked = 0;
    for (ReferenceCase.Expected e : CERTIFIED.figures("i3_linreg.csv")) {
      if (!e.key1().equals("Longley")) {
        continue;
      }
      double[] contrast = new double[7];
      switch (e.quantity()) {
        case "coef", "se" -> {
          contrast[Integer.parseInt(e.key2())] = 1;
          var estimate = fit.estimate(contrast, Errors.CLASSICAL).orElseThrow();
          double actual = e.quantity().equals("coef") ? estimate.value() : estimate.se();
          assertDigits(e.toString(), actual, e.value(), 11);
          assertThat(estimate.df()).isEqualTo(9);
        }
        case "resid.sd" -> assertDigits(e.toString(), fit.residualSd(), e.value(), 11);
        case "R2" -> assertDigits(e.toString(), fit.explained().orElseThrow(), e.value(), 13);
        default -> throw new AssertionError(e.quantity());
      }
      checked++;
    }
    assertThat(checked).isGreaterThanOrEqualTo(14);
  }

  /** A weight of two is the same row twice, for the coefficients. */
  @Test
  void wholeWeightsAreRepeatedRows() {
    double[] y = {3.1, 4.0, 5.2, 5.9, 7.4};
    double[][] x = {{1}, {2}, {3}, {4}, {5.5}};
    double[] w = {1, 2, 1, 3, 1};
    List<Double> ys = new ArrayList<>();
    List<double[]> xs = new ArrayList<>();
    for (int i = 0; i < y.length; i++) {
      for (int r = 0; r < w[i]; r++) {
        ys.add(y[i]);
        xs.add(x[i]);
      }
    }
    var weighted = ClusteredRegression.of(y, x, w, null).orElseThrow();
    var repeated =
        ClusteredRegression.of(
                ys.stream().mapToDouble(v -> v).toArray(), xs.toArray(double[][]::new), null, null)
            .orElseThrow();
    for (double[] contrast : new double[][] {{1, 0}, {0, 1}, {1, 4}}) {
      assertRelative(
          Arrays.toString(contrast),
          weighted.estimate(contrast, Errors.CLASSICAL).orElseThrow().value(),
          repeated.estimate(contrast, Errors.CLASSICAL).orElseThrow().value(),
          1e-13);
    }
  }
}
