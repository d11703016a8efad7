package org.griplore.query.discipline;

import java.util.Optional;
import org.griplore.query.statistics.Interval;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/**
 * How results of a discipline are set on one scale, plus is better: log ratios for ratio
 * disciplines, the unit itself for levels and points. Log differences are shown in per cent of
 * performance: 100 (e^d - 1), so 10 per cent more grip is 9.09 per cent less distance.
 */
public final class ComparisonScale {
  private final Discipline discipline;
  private final boolean ratio;

  /** The scale of a discipline. */
  public ComparisonScale(Discipline discipline) {
    this.discipline = discipline;
    this.ratio = discipline.scale() == Scale.RATIO;
  }

  /** Whether results in a unit stand on the discipline's scale. */
  public boolean takes(Unit unit) {
    if (!discipline.accepts(unit)) {
      return false;
    }
    return switch (discipline.scale()) {
      case RATIO -> discipline.scaleOf(unit) == Scale.RATIO;
      case LEVEL -> unit == discipline.unit();
      case POINTS -> unit == Unit.POINTS_10;
    };
  }

  /** A value on the scale; NaN when it has no logarithm. */
  public double of(double value, Unit unit) {
    int sign = discipline.directionOf(unit).sign();
    if (!ratio) {
      return sign * value;
    }
    return value > 0 ? sign * Math.log(value) : Double.NaN;
  }

  /** The value in a unit that stands at a point of the scale: what {@link #of} is the way to. */
  public double back(double onScale, Unit unit) {
    int sign = discipline.directionOf(unit).sign();
    return ratio ? Math.exp(sign * onScale) : sign * onScale;
  }

  /** Variance of a mean of runs on the scale; NaN when spread or runs are not known. */
  public double variance(double value, double spread, int runs) {
    if (Double.isNaN(spread) || runs < 1) {
      return Double.NaN;
    }
    double relative = ratio ? spread / value : spread;
    return relative * relative / runs;
  }

  /** Whether differences are log ratios. */
  public boolean isRatio() {
    return ratio;
  }

  /** What differences are shown in: {@code %} or the unit. */
  public String shownUnit() {
    return ratio ? "%" : discipline.unit().symbol();
  }

  /** A difference on the scale as it is shown. */
  public Double shown(Double difference) {
    return difference == null || !ratio ? difference : (Double) (100 * Math.expm1(difference));
  }

  /** The lower end of a difference's interval as it is shown; null without one. */
  public Double shownLow(Optional<Interval> interval) {
    return shown(interval.map(Interval::low).orElse(null));
  }

  /** The upper end of a difference's interval as it is shown; null without one. */
  public Double shownHigh(Optional<Interval> interval) {
    return shown(interval.map(Interval::high).orElse(null));
  }

  /** The standard error of a shown difference: for per cent by the delta method. */
  public Double shownSe(Double difference, Double se) {
    return se == null || !ratio ? se : (Double) (100 * Math.exp(difference) * se);
  }

  /** The difference itself when it is a log ratio; else null. */
  public Double log(Double difference) {
    return ratio ? difference : null;
  }
}
