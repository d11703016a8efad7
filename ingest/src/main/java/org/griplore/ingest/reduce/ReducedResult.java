package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Objects;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * A candidate's result in one discipline. Where the tyre was driven in several sets, it is the mean
 * of their effects (geometric mean of their ratios); sets that are void are left out of it as long
 * as one stands, for they were repeated.
 *
 * @param model the tyre's model
 * @param measure what the effect is a ratio or difference of
 * @param sets all its sets in the order of the day, the void ones too
 * @param used those that went into the result
 * @param effect log ratio to the reference, or difference from it; null without a reference
 * @param corrected the figure at the anchor's level, in {@code unit}
 * @param correctedError its standard error against other candidates, the level taken as fixed; null
 *     when unknown
 * @param spread standard deviation of runs within its sets, in {@code unit}; null for single runs
 * @param runs how many runs count
 * @param unit unit of {@code corrected} and {@code spread}
 */
public record ReducedResult(
    String model,
    RunMeasure measure,
    List<SetResult> sets,
    List<SetResult> used,
    Effect effect,
    double corrected,
    Double correctedError,
    Double spread,
    int runs,
    Unit unit) {
  /** Keeps the lists from changing. */
  public ReducedResult {
    Objects.requireNonNull(model);
    sets = List.copyOf(sets);
    used = List.copyOf(used);
  }

  /** Whether a reference was there to correct by. */
  public boolean isCorrected() {
    return effect != null;
  }

  /** Ratio to the reference; null without a reference or where differences are formed. */
  public Double ratio() {
    return effect == null || !measure.byRatio() ? null : (Double) Math.exp(effect.value());
  }

  /** Standard error of {@link #ratio} (delta method); null when unknown. */
  public Double ratioError() {
    Double error = ratio() == null ? null : effect.standardError();
    return error == null ? null : (Double) (ratio() * error);
  }

  /** From its runs to {@code corrected}, in order. */
  public List<Step> steps() {
    return SetSteps.joined(this);
  }

  /** Whether it stands under the limits. */
  public boolean isValid() {
    return used.stream().allMatch(set -> set.standing().isValid());
  }

  /** What {@link #ratio} or the difference is of, in words. */
  public String effectWords() {
    return (measure.byRatio() ? "ratio of " : "difference of ") + measure.kind().words();
  }
}
