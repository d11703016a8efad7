package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.griplore.query.answer.Missing;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.statistics.ClusteredRegression.Estimate;
import org.griplore.query.statistics.Interval;

/** Makes the row of one moderator: the fit where there is one, else why there is none. */
final class Dependence {
  private final Evidence evidence;
  private final ComparisonScale measure;
  private final List<Side> sides;
  private final List<TestContrast> contrasts;
  private final Exclusions excluded;
  private final Citations citations;

  Dependence(
      Evidence evidence,
      ComparisonScale measure,
      List<Side> sides,
      List<TestContrast> contrasts,
      Exclusions excluded,
      Citations citations) {
    this.evidence = evidence;
    this.measure = measure;
    this.sides = sides;
    this.contrasts = contrasts;
    this.excluded = excluded;
    this.citations = citations;
  }

  DependsRow on(Moderator moderator) {
    Moderator.Values values = moderator.in(evidence, contrasts);
    int[] stated =
        IntStream.range(0, contrasts.size()).filter(i -> values.of().get(i).isPresent()).toArray();
    excluded.add(
        "tests with both that do not state the " + values.words(),
        contrasts.size() - stated.length);
    double[] at = IntStream.of(stated).mapToDouble(i -> values.of().get(i).getAsDouble()).toArray();
    double[] y = IntStream.of(stated).mapToDouble(i -> contrasts.get(i).difference()).toArray();
    double[] weight = IntStream.of(stated).mapToDouble(i -> contrasts.get(i).weight()).toArray();
    List<ContrastPoint> points = new ArrayList<>();
    for (int i = 0; i < stated.length; i++) {
      points.add(point(contrasts.get(stated[i]), at[i]));
    }
    OptionalDouble from = IntStream.range(0, at.length).mapToDouble(i -> at[i]).min();
    OptionalDouble to = IntStream.range(0, at.length).mapToDouble(i -> at[i]).max();
    Optional<Slope> slope = Slope.of(y, at, weight, clusters(stated), moderator.step());
    String unit = (measure.shownUnit() + " per " + moderator.per()).strip();
    if (slope.isEmpty()) {
      return without(moderator, values.words(), unit, points, from, to);
    }
    return with(
        slope.get(),
        same(stated, at, moderator),
        moderator,
        values.words(),
        unit,
        points,
        from,
        to);
  }

  /** The series that each test belongs to. */
  private int[] clusters(int[] stated) {
    return IntStream.of(stated)
        .map(i -> evidence.testSeries().of(contrasts.get(i).test()))
        .toArray();
  }

  /** The slope by the same models, where others can stand for a side. */
  private Optional<Estimate> same(int[] stated, double[] at, Moderator moderator) {
    if (sides.stream().noneMatch(Side::isMany)) {
      return Optional.empty();
    }
    List<SameModels.Arm> arms = new ArrayList<>();
    for (int i = 0; i < stated.length; i++) {
      TestContrast contrast = contrasts.get(stated[i]);
      List<Integer> entries = contrast.entries();
      for (int k = 0; k < entries.size(); k++) {
        arms.add(
            new SameModels.Arm(
                contrast.test(),
                evidence.testSeries().of(contrast.test()),
                evidence.entries().model()[entries.get(k)],
                contrast.figures().get(k),
                k < contrast.first().size() ? at[i] / moderator.step() : 0));
      }
    }
    return SameModels.slope(arms);
  }

  private ContrastPoint point(TestContrast contrast, double at) {
    contrast.entries().forEach(citations::citeEntry);
    var test = evidence.tests().get(contrast.test());
    return new ContrastPoint(
        test.key(),
        test.details().date() == null ? null : test.details().date().text(),
        at,
        measure.shown(contrast.difference()),
        contrast.first().size(),
        contrast.second().size(),
        contrast.weight(),
        citations.citeEntry(contrast.first().get(0)));
  }

  private DependsRow without(
      Moderator moderator,
      String words,
      String unit,
      List<ContrastPoint> points,
      OptionalDouble from,
      OptionalDouble to) {
    String why;
    if (points.size() < 3) {
      why = "cannot tell: %d of at least 3 tests".formatted(points.size());
    } else if (from.getAsDouble() == to.getAsDouble()) {
      why = "cannot tell: all tests have the same " + words;
    } else {
      why = "cannot tell: one test alone would decide";
    }
    return new DependsRowBuilder()
        .moderator(moderator.key())
        .measuredAs(words)
        .in(moderator.unit())
        .unit(unit)
        .tests(points.size())
        .lowest(Missing.orNull(from))
        .highest(Missing.orNull(to))
        .verdict(why)
        .points(points)
        .build();
  }

  private DependsRow with(
      Slope fit,
      Optional<Estimate> same,
      Moderator moderator,
      String words,
      String unit,
      List<ContrastPoint> points,
      OptionalDouble from,
      OptionalDouble to) {
    var slope = fit.slope();
    Optional<Interval> interval = fit.interval(slope);
    Optional<Interval> there = fit.interval(fit.contrast());
    Optional<Interval> sameInterval = same.map(estimate -> estimate.interval(Difference.LEVEL));
    Double se = interval.isPresent() ? (Double) slope.se() : null;
    return new DependsRowBuilder()
        .moderator(moderator.key())
        .measuredAs(words)
        .in(moderator.unit())
        .slope(measure.shown(slope.value()))
        .se(measure.shownSe(slope.value(), se))
        .low(measure.shownLow(interval))
        .high(measure.shownHigh(interval))
        .p(interval.flatMap(known -> slope.p()).orElse(null))
        .df(interval.isPresent() ? (Double) slope.df() : null)
        .unit(unit)
        .tests(points.size())
        .lowest(Missing.orNull(from))
        .highest(Missing.orNull(to))
        .at(fit.mean())
        .contrast(measure.shown(fit.contrast().value()))
        .contrastLow(measure.shownLow(there))
        .contrastHigh(measure.shownHigh(there))
        .sameModels(measure.shown(same.map(Estimate::value).orElse(null)))
        .sameModelsLow(measure.shownLow(sameInterval))
        .sameModelsHigh(measure.shownHigh(sameInterval))
        .verdict(verdict(interval, sameInterval, moderator))
        .logSlope(measure.log(slope.value()))
        .logSe(measure.isRatio() ? se : null)
        .points(points)
        .line(fit.line(from.getAsDouble(), to.getAsDouble(), measure))
        .build();
  }

  /** What the contrasts say, and whether the same models say it too. */
  private String verdict(
      Optional<Interval> interval, Optional<Interval> same, Moderator moderator) {
    if (interval.isEmpty()) {
      return "cannot tell: the tests do not scatter, so nothing is known of the error";
    }
    boolean told = !interval.get().contains(0);
    boolean toldBySame = same.isPresent() && !same.get().contains(0);
    if (!told) {
      return toldBySame
          ? change(same.get(), moderator) + ", by the same models compared with themselves"
          : "cannot be told from none";
    }
    return change(interval.get(), moderator)
        + (toldBySame && same.get().low() > 0 != interval.get().low() > 0
            ? ", but the same models say the opposite"
            : same.isPresent() && !toldBySame
                ? ", but that cannot be told by the same models"
                : "");
  }

  private String change(Interval slope, Moderator moderator) {
    return sides.get(0).name()
        + (slope.low() > 0 ? " gains on " : " loses to ")
        + sides.get(1).name()
        + " "
        + moderator.more();
  }
}
