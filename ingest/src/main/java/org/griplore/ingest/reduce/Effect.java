package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A candidate against the reference: the natural logarithm of the ratio of their figures, or their
 * difference for levels and points.
 *
 * @param value log ratio, or difference in the figure's unit
 * @param components what its uncertainty is made of
 */
public record Effect(double value, List<UncertaintyPart> components) {
  /** Keeps the list from changing. */
  public Effect {
    components = List.copyOf(components);
  }

  /** The mean of effects of one candidate; shared sources stay shared. */
  public static Effect mean(List<Effect> effects) {
    Map<String, UncertaintyPart> merged = new LinkedHashMap<>();
    for (Effect effect : effects) {
      for (UncertaintyPart c : effect.components) {
        double load = c.load() / effects.size();
        merged.merge(
            c.source(),
            new UncertaintyPart(c.source(), load, c.variance(), c.freedom()),
            (a, b) ->
                new UncertaintyPart(a.source(), a.load() + b.load(), a.variance(), a.freedom()));
      }
    }
    double mean = effects.stream().mapToDouble(Effect::value).average().orElseThrow();
    return new Effect(mean, new ArrayList<>(merged.values()));
  }

  /** Standard error; null when a part of it is unknown. */
  public Double standardError() {
    Double variance = covariance(this);
    return variance == null ? null : (Double) Math.sqrt(variance);
  }

  /**
   * Covariance with another effect of the same log: sum of load x load x variance over the sources
   * that both have. Two candidates of a cycle share its references.
   *
   * @return null when the variance of a shared source is unknown
   */
  public Double covariance(Effect other) {
    double sum = 0;
    for (UncertaintyPart mine : components) {
      for (UncertaintyPart theirs : other.components) {
        if (mine.source().equals(theirs.source())) {
          if (mine.variance() == null) {
            return null;
          }
          sum += mine.load() * theirs.load() * mine.variance();
        }
      }
    }
    return sum;
  }

  /**
   * Effective degrees of freedom, (sum v)^2 / sum (v^2 / df) over the components (Satterthwaite
   * 1946, Biometrics Bulletin 2:110); null when a part is unknown or nothing varies.
   */
  public Double freedom() {
    double sum = 0;
    double weighted = 0;
    for (UncertaintyPart c : components) {
      if (c.variance() == null) {
        return null;
      }
      sum += c.part();
      weighted += c.part() * c.part() / c.freedom();
    }
    return weighted == 0 ? null : (Double) (sum * sum / weighted);
  }

  /** This less another effect of the same log: the two candidates compared. */
  public Effect less(Effect other) {
    Effect turned =
        new Effect(
            -other.value,
            other.components.stream()
                .map(c -> new UncertaintyPart(c.source(), -c.load(), c.variance(), c.freedom()))
                .toList());
    Effect half = mean(List.of(this, turned));
    return new Effect(
        2 * half.value,
        half.components.stream()
            .map(c -> new UncertaintyPart(c.source(), 2 * c.load(), c.variance(), c.freedom()))
            .toList());
  }
}
