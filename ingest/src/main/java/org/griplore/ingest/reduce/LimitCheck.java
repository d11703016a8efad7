package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.ingest.reduce.limit.Limit.What;
import org.griplore.ingest.reduce.limit.Limits;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.ingest.reduce.limit.Standing;
import org.griplore.ingest.reduce.run.RunMeasure;

/**
 * Judges sets and cycles by the limits. A reference whose spread is too wide voids each cycle that
 * it opens or closes, a drift that is too large voids its cycle, a candidate whose spread is too
 * wide voids itself only (the trailer form of Regulation (EC) 1222/2009 annex V, "validation of
 * results", read in source; taken for the other forms too).
 */
final class LimitCheck {
  private final Limits limits;
  private final RunMeasure measure;

  LimitCheck(Limits limits, RunMeasure measure) {
    this.limits = limits;
    this.measure = measure;
  }

  Standing standing(SetStatistics candidate, ReferenceCycle cycle) {
    List<String> reference = new ArrayList<>();
    wide(cycle.opening(), reference);
    wide(cycle.closing(), reference);
    drifted(cycle, reference);
    List<String> own = new ArrayList<>();
    wide(candidate, own);
    if (!reference.isEmpty()) {
      reference.addAll(own);
      return new Standing(Standing.State.VOID_BY_REFERENCE, reference);
    }
    return new Standing(own.isEmpty() ? Standing.State.VALID : Standing.State.VOID_BY_ITSELF, own);
  }

  /** Whether there is a limit that voids. */
  boolean judges() {
    return measure.byRatio()
        && (limits.of(What.VARIATION_WITHIN_SET).isPresent()
            || limits.of(What.REFERENCE_DRIFT).isPresent());
  }

  /** A reference by its own spread, and by the drift of the cycles it opens or closes. */
  Standing ofReference(SetStatistics reference, List<ReferenceCycle> cycles) {
    List<String> reasons = new ArrayList<>();
    wide(reference, reasons);
    for (ReferenceCycle cycle : cycles) {
      if (cycle.opening() == reference || cycle.closing() == reference) {
        drifted(cycle, reasons);
      }
    }
    return reasons.isEmpty()
        ? Standing.UNJUDGED
        : new Standing(Standing.State.VOID_BY_REFERENCE, reasons);
  }

  private void wide(SetStatistics set, List<String> reasons) {
    if (set == null || !measure.byRatio() || set.variation() == null) {
      return;
    }
    limits
        .of(What.VARIATION_WITHIN_SET)
        .filter(limit -> !limit.holds(set.variation()))
        .ifPresent(
            limit ->
                reasons.add(
                    String.format(
                        Locale.ROOT,
                        "sequence %d, %s: CV %.2f %%; limit: %s",
                        set.sequence(),
                        set.model(),
                        100 * set.variation(),
                        limit.words())));
  }

  private void drifted(ReferenceCycle cycle, List<String> reasons) {
    Double drift = measure.byRatio() ? cycle.drift(measure) : null;
    if (drift == null) {
      return;
    }
    limits
        .of(What.REFERENCE_DRIFT)
        .filter(limit -> !limit.holds(drift))
        .ifPresent(
            limit ->
                reasons.add(
                    String.format(
                        Locale.ROOT,
                        "reference drift of %.2f %% from sequence %d to %d; limit: %s",
                        100 * drift,
                        cycle.opening().sequence(),
                        cycle.closing().sequence(),
                        limit.words())));
  }

  /** What is remarked on and voids nothing: long cycles, short sets. */
  List<Remark> remarks(List<SetStatistics> sets, List<ReferenceCycle> cycles) {
    List<Remark> remarks = new ArrayList<>();
    for (ReferenceCycle cycle : cycles) {
      limits
          .of(What.CANDIDATES_BETWEEN)
          .filter(limit -> !limit.holds(cycle.candidates().size()))
          .ifPresent(
              limit ->
                  remarks.add(
                      remark(
                          cycle.candidates().get(0),
                          "cycle " + cycle.number() + " is " + cycle.order(),
                          "interpolated all the same; limit: " + limit.words())));
    }
    for (SetStatistics set : sets) {
      limits
          .of(What.FEWEST_RUNS)
          .filter(limit -> !limit.holds(set.count()))
          .ifPresent(
              limit ->
                  remarks.add(
                      remark(
                          set,
                          set.model()
                              + ", sequence "
                              + set.sequence()
                              + ": "
                              + set.count()
                              + " runs count",
                          "used all the same; limit: " + limit.words())));
    }
    return remarks;
  }

  private static Remark remark(SetStatistics set, String found, String meaning) {
    return new Remark(Remark.Kind.LIMIT, set.first().cell(), found, meaning);
  }
}
