package org.griplore.query.dependence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.griplore.query.estimate.Measure;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.statistics.Interval;

/** Makes the row of one moderator: the fit where there is one, else why there is none. */
final class Dependence {
  private final Evidence evidence;
  private final Measure measure;
  private final List<Side> sides;
  private final List<TestContrast> contrasts;
  private final Exclusions excluded;
  private final Citations citations;

  Dependence(
      Evidence evidence,
      Measure measure,
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
    Optional<Slope> slope = Slope.of(y, at, weight, moderator.step());
    String unit = (measure.shownUnit() + " per " + moderator.per()).strip();
    if (slope.isEmpty()) {
      return without(moderator, values.words(), unit, points, from, to);
    }
    return with(slope.get(), moderator, values.words(), unit, points, from, to);
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
    return new DependsRow(
        moderator.key(),
        words,
        moderator.unit(),
        null,
        null,
        null,
        null,
        null,
        null,
        unit,
        points.size(),
        orNull(from),
        orNull(to),
        null,
        null,
        null,
        null,
        why,
        null,
        null,
        points,
        List.of());
  }

  private DependsRow with(
      Slope fit,
      Moderator moderator,
      String words,
      String unit,
      List<ContrastPoint> points,
      OptionalDouble from,
      OptionalDouble to) {
    var slope = fit.slope();
    Optional<Interval> interval = fit.interval(slope);
    Optional<Interval> there = fit.interval(fit.contrast());
    Double se = interval.isPresent() ? (Double) slope.se() : null;
    return new DependsRow(
        moderator.key(),
        words,
        moderator.unit(),
        measure.shown(slope.value()),
        measure.shownSe(slope.value(), se),
        measure.shown(interval.map(Interval::low).orElse(null)),
        measure.shown(interval.map(Interval::high).orElse(null)),
        interval.flatMap(known -> slope.p()).orElse(null),
        interval.isPresent() ? (Double) slope.df() : null,
        unit,
        points.size(),
        orNull(from),
        orNull(to),
        fit.mean(),
        measure.shown(fit.contrast().value()),
        measure.shown(there.map(Interval::low).orElse(null)),
        measure.shown(there.map(Interval::high).orElse(null)),
        verdict(interval, moderator),
        measure.log(slope.value()),
        measure.isRatio() ? se : null,
        points,
        fit.line(from.getAsDouble(), to.getAsDouble(), measure));
  }

  private String verdict(Optional<Interval> interval, Moderator moderator) {
    if (interval.isEmpty()) {
      return "cannot tell: the tests do not scatter, so nothing is known of the error";
    }
    if (interval.get().contains(0)) {
      return "cannot be told from none";
    }
    return sides.get(0).name()
        + (interval.get().low() > 0 ? " gains on " : " loses to ")
        + sides.get(1).name()
        + " "
        + moderator.more();
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }
}
