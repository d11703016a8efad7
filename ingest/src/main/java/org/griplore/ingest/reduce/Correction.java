package org.griplore.ingest.reduce;

import org.griplore.ingest.reduce.run.RunMeasure;

/**
 * Corrects a figure by the reference: multiplicative where ratios are formed, T x level /
 * reference; a shift for levels and points, T + level - reference (ASTM F1650, natural reading).
 */
final class Correction {
  private Correction() {}

  static Effect effect(
      SetStatistics set, LocalReference reference, RunMeasure measure, SetErrors errors) {
    double value =
        measure.byRatio()
            ? Math.log(set.mean() / reference.value())
            : set.mean() - reference.value();
    return new Effect(value, errors.components(set, reference));
  }

  /** The figure at a level. */
  static double at(double level, double effect, RunMeasure measure) {
    return measure.byRatio() ? level * Math.exp(effect) : level + effect;
  }
}
