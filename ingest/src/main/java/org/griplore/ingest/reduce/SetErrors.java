package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.reduce.run.RunMeasure;

/**
 * The variance of each set's mean and how an effect answers to it, all on the effect's scale:
 * relative where sets are compared by ratio (delta method), in the figure's unit otherwise.
 */
final class SetErrors {
  private final RunMeasure measure;
  private final boolean ownFirst;
  private final Double pooled;
  private final int pooledFreedom;
  private final Double driftSquared;
  private final int gaps;

  /**
   * @param sets all sets of the log
   * @param references the usable references in order
   */
  SetErrors(
      RunMeasure measure,
      ReductionOptions.Spread spread,
      List<SetStatistics> sets,
      List<SetStatistics> references) {
    this.measure = measure;
    this.ownFirst = spread == ReductionOptions.Spread.OWN;
    double squares = 0;
    int freedom = 0;
    for (SetStatistics set : sets) {
      if (set.deviation() != null) {
        double deviation = set.deviation() / scale(set);
        squares += (set.count() - 1) * deviation * deviation;
        freedom += set.count() - 1;
      }
    }
    this.pooled = freedom == 0 ? null : (Double) (squares / freedom);
    this.pooledFreedom = freedom;
    double rates = 0;
    for (int i = 1; i < references.size(); i++) {
      SetStatistics before = references.get(i - 1);
      SetStatistics after = references.get(i);
      double rate =
          (after.mean() - before.mean()) / scale(before) / (after.position() - before.position());
      rates += rate * rate;
    }
    this.gaps = references.size() - 1;
    this.driftSquared = gaps < 1 ? null : (Double) (rates / gaps);
  }

  /** Pooled variance of one run on the effect's scale; null when no set has two runs. */
  Double pooled() {
    return pooled;
  }

  int pooledFreedom() {
    return pooledFreedom;
  }

  /**
   * What an effect against this reference is uncertain by: the candidate's runs, the runs of each
   * reference measurement with its weight, and for a one-sided reference the drift that could not
   * be seen, taken as the root mean square of the day's drift per place times the places between.
   */
  List<UncertaintyPart> components(SetStatistics candidate, LocalReference reference) {
    List<UncertaintyPart> components = new ArrayList<>();
    components.add(component(candidate, 1));
    for (LocalReference.Share share : reference.shares()) {
      double load =
          measure.byRatio()
              ? share.weight() * share.set().mean() / reference.value()
              : share.weight();
      components.add(component(share.set(), -load));
    }
    if (reference.basis() == LocalReference.Basis.ONE_SIDED && driftSquared != null) {
      SetStatistics only = reference.shares().get(0).set();
      components.add(
          new UncertaintyPart(
              (reference.reach() < 0 ? "drift after sequence " : "drift before sequence ")
                  + only.sequence(),
              -Math.abs(reference.reach()),
              driftSquared,
              gaps));
    }
    return components;
  }

  private UncertaintyPart component(SetStatistics set, double load) {
    String source = "sequence " + set.sequence();
    if (set.deviation() != null && ownFirst) {
      double error = set.standardError() / scale(set);
      return new UncertaintyPart(source, load, error * error, set.count() - 1);
    }
    return pooled == null
        ? new UncertaintyPart(source, load, null, 0)
        : new UncertaintyPart(source, load, pooled / set.count(), pooledFreedom);
  }

  private double scale(SetStatistics set) {
    return measure.byRatio() ? set.mean() : 1;
  }
}
