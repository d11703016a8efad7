package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.griplore.query.statistics.Closeness.assertPrinted;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Means, ratios and repeats against figures of a general statistical package. */
class SampleStatisticsTest {
  /** Student 1908, Biometrika 6:1; Welch 1947. */
  @Test
  void welchAndPairedOnStudentsData() {
    ReferenceCase student = ReferenceCase.carried("student-1908");
    double[] first = student.column("extra", "group", "1");
    double[] second = student.column("extra", "group", "2");
    MeanDifference welch = MeanDifference.welch(first, second);
    MeanDifference paired = MeanDifference.paired(first, second);
    Map<String, Double> actual = new LinkedHashMap<>();
    actual.put("t", welch.t());
    actual.put("df", welch.df());
    actual.put("p", welch.p());
    actual.put("ci.lb", welch.interval(0.95).low());
    actual.put("ci.ub", welch.interval(0.95).high());
    actual.put("stderr", welch.se());
    actual.put("mean1", Summary.of(first).mean());
    actual.put("mean2", Summary.of(second).mean());
    actual.put("paired.t", paired.t());
    actual.put("paired.df", paired.df());
    actual.put("paired.p", paired.p());
    actual.put("paired.ci.lb", paired.interval(0.95).low());
    actual.put("paired.ci.ub", paired.interval(0.95).high());
    for (ReferenceCase.Expected e : student.expected()) {
      assertRelative(e.quantity(), actual.get(e.quantity()), e.value(), 1e-10);
    }
    for (ReferenceCase.Expected e : student.published()) {
      assertPrinted(e.quantity(), actual.get(e.quantity()), e.value(), e.decimals());
    }
  }

  /** Delta method, Satterthwaite, log and Fieller 1954 intervals. */
  @Test
  void ratioOfTwoMeans() {
    ReferenceCase data = ReferenceCase.carried("ratio-of-means");
    RatioOfMeans ratio =
        RatioOfMeans.of(data.column("y", "group", "a"), data.column("y", "group", "b"));
    double t = Tails.student(0.95, ratio.df());
    double z = Tails.normal(0.95);
    Map<String, Double> actual = new LinkedHashMap<>();
    actual.put("mean.a", ratio.first());
    actual.put("mean.b", ratio.second());
    actual.put("var.mean.a", ratio.firstVariance());
    actual.put("var.mean.b", ratio.secondVariance());
    actual.put("ratio", ratio.ratio());
    actual.put("se.delta", ratio.se());
    actual.put("df.satterthwaite", ratio.df());
    actual.put("ci.delta.lb", ratio.interval(0.95).low());
    actual.put("ci.delta.ub", ratio.interval(0.95).high());
    actual.put("ci.log.lb", ratio.logInterval(0.95).low());
    actual.put("ci.log.ub", ratio.logInterval(0.95).high());
    actual.put("fieller.normal.lb", ratio.fieller(z).orElseThrow().low());
    actual.put("fieller.normal.ub", ratio.fieller(z).orElseThrow().high());
    actual.put("fieller.t.lb", ratio.fieller(t).orElseThrow().low());
    actual.put("fieller.t.ub", ratio.fieller(t).orElseThrow().high());
    double[] logA = logs(data.column("y", "group", "a"));
    MeanDifference ofLogs = MeanDifference.welch(logA, logs(data.column("y", "group", "b")));
    actual.put("welch.log.diff", ofLogs.difference());
    actual.put("welch.log.df", ofLogs.df());
    actual.put("welch.log.ci.lb", ofLogs.interval(0.95).low());
    actual.put("welch.log.ci.ub", ofLogs.interval(0.95).high());
    actual.put("welch.log.p", ofLogs.p());
    for (ReferenceCase.Expected e : data.expected()) {
      assertThat(actual).containsKey(e.quantity());
      assertRelative(e.quantity(), actual.get(e.quantity()), e.value(), 1e-10);
    }
  }

  private static double[] logs(double[] values) {
    return java.util.Arrays.stream(values).map(Math::log).toArray();
  }

  /** ISO 5725-2 moments and exact REML on unequal groups. */
  @Test
  void repeatabilityOfUnequalGroups() {
    ReferenceCase data = ReferenceCase.carried("repeatability");
    double[][] values =
        data.data().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.get("tyre"), LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .map(rows -> rows.stream().mapToDouble(r -> Double.parseDouble(r.get("y"))).toArray())
            .toArray(double[][]::new);
    OneWayRepeatability repeats = OneWayRepeatability.of(values);
    OneWayReml reml = OneWayReml.of(values);
    for (ReferenceCase.Expected e : data.expected()) {
      double actual =
          switch (e.quantity()) {
            case "ms.between" -> repeats.oneWay().betweenMeanSquare();
            case "ms.within" -> repeats.oneWay().withinMeanSquare();
            case "df.between" -> repeats.oneWay().betweenDf();
            case "df.within" -> repeats.oneWay().withinDf();
            case "n0" -> repeats.meanSize();
            case "s.r" -> repeats.repeatability();
            case "s.L2.moments" -> repeats.between() * repeats.between();
            case "s.R" -> repeats.reproducibility();
            case "icc.moments" -> repeats.intraclass();
            case "F" -> repeats.oneWay().f();
            case "p" -> repeats.oneWay().p();
            case "s.r.ci.chi2" ->
                e.key1().equals("lb")
                    ? repeats.repeatabilityInterval(0.95).low()
                    : repeats.repeatabilityInterval(0.95).high();
            case "repeatability.limit.1.96sqrt2.sr" -> repeats.repeatabilityLimit();
            case "reml.within" -> reml.within();
            case "reml.between" -> reml.between();
            default -> throw new AssertionError(e.quantity());
          };
      assertRelative(e.quantity() + e.key1(), actual, e.value(), 1e-8);
    }
  }

  /** Equal groups: REML is the moments, where those are not below 0. */
  @Test
  void remlOfEqualGroupsIsTheMoments() {
    double[][] apart = {{1.0, 1.2, 1.1}, {2.0, 2.3, 1.9}, {1.4, 1.5, 1.8}};
    OneWayRepeatability moments = OneWayRepeatability.of(apart);
    OneWayReml reml = OneWayReml.of(apart);
    assertRelative("within", reml.within(), moments.oneWay().withinMeanSquare(), 1e-10);
    assertRelative("between", reml.between(), Math.pow(moments.between(), 2), 1e-10);
    double[][] alike = {{1, 2, 3}, {3, 1, 2}, {2, 3, 1}};
    assertThat(OneWayReml.of(alike).between()).isZero();
    assertThat(OneWayRepeatability.of(alike).between()).isZero();
  }

  @Test
  void whatHasNoFigureIsRefused() {
    double[] none = {};
    double[] one = {5};
    double[] same = {5, 5};
    double[] two = {5, 6};
    double[] gap = {5, Double.NaN};
    assertThat(Summary.of(one).mean()).isEqualTo(5);
    assertThat(Summary.of(same).sd()).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> Summary.of(none));
    assertThatIllegalArgumentException().isThrownBy(() -> Summary.of(gap));
    assertThatIllegalArgumentException().isThrownBy(() -> Summary.of(one).sd());
    assertThatIllegalArgumentException().isThrownBy(() -> Summary.of(-1, 1).cv());
    assertThatIllegalArgumentException().isThrownBy(() -> MeanDifference.welch(one, two));
    assertThatIllegalArgumentException().isThrownBy(() -> MeanDifference.welch(same, same));
    assertThat(MeanDifference.welch(same, two).df()).isEqualTo(1);
    assertThatIllegalArgumentException().isThrownBy(() -> MeanDifference.paired(two, one));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MeanDifference.paired(two, new double[] {6, 7}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RatioOfMeans.of(two, new double[] {-1, 1}));
    assertThat(RatioOfMeans.of(two, new double[] {-1, 2}).fieller(12.7)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RatioOfMeans.of(two, new double[] {-5, -6}).logInterval(0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> OneWay.of(new double[][] {two}));
    assertThatIllegalArgumentException().isThrownBy(() -> OneWay.of(new double[][] {one, one}));
    OneWay flat = OneWay.of(new double[][] {same, {6, 6}});
    assertThatIllegalArgumentException().isThrownBy(flat::f);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OneWayReml.of(new double[][] {same, {6, 6}}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OneWay.of(new double[][] {same, same}).explained());
    assertThat(List.of(Tails.fisherAbove(0, 1, 1), Tails.chiSquaredAbove(0, 1))).containsOnly(1.0);
  }
}
