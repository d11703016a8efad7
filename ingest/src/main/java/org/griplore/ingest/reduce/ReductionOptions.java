package org.griplore.ingest.reduce;

import java.util.Objects;
import org.griplore.ingest.reduce.limit.Limits;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.tyre.TyreClass;

/**
 * How a log is reduced.
 *
 * @param anchor the level of corrected values
 * @param drift when a drift of the reference is corrected
 * @param openEnd what is done with a reference missing on one side
 * @param spread whose runs tell the spread of a set
 * @param limits validity limits
 * @param window nominal speeds of braking runs; null to take those the runs aimed at, which is
 *     remarked on
 * @param coastBy class of the tyres whose levels are brought to the reference speed and 20 degrees
 *     Celsius of the road; null to take levels as logged
 */
public record ReductionOptions(
    Anchor anchor,
    Drift drift,
    OpenEnd openEnd,
    Spread spread,
    Limits limits,
    Window window,
    TyreClass coastBy) {
  /** When a drift is corrected. */
  public enum Drift {
    /** Always (ASTM F1650 method B). */
    ALWAYS,
    /** Only when it is significant, else the mean of all references is used (method A). */
    WHERE_SIGNIFICANT
  }

  /** What is done with a missing opening or closing reference. */
  public enum OpenEnd {
    /** The nearest measurement is used, with a wider uncertainty and a remark. */
    NEAREST,
    /** The log is refused. */
    REFUSE
  }

  /** Whose runs tell the spread. */
  public enum Spread {
    /** The set's own; the pooled spread only for a set of one run. */
    OWN,
    /** The spread pooled over all sets of the log. */
    POOLED
  }

  /** Checks that only the window and the class may be null. */
  public ReductionOptions {
    Objects.requireNonNull(anchor);
    Objects.requireNonNull(drift);
    Objects.requireNonNull(openEnd);
    Objects.requireNonNull(spread);
    Objects.requireNonNull(limits);
  }

  /** Always corrected, on the grand mean, with the published limits of the discipline. */
  public static ReductionOptions ofDiscipline(String key) {
    return new ReductionOptions(
        Anchor.GRAND_MEAN,
        Drift.ALWAYS,
        OpenEnd.NEAREST,
        Spread.OWN,
        Limits.ofDiscipline(key),
        null,
        null);
  }

  /** The same on another level. */
  public ReductionOptions on(Anchor other) {
    return new ReductionOptions(other, drift, openEnd, spread, limits, window, coastBy);
  }

  /** The same with another rule for drifts. */
  public ReductionOptions correcting(Drift other) {
    return new ReductionOptions(anchor, other, openEnd, spread, limits, window, coastBy);
  }

  /** The same with another rule for open ends. */
  public ReductionOptions atOpenEnds(OpenEnd other) {
    return new ReductionOptions(anchor, drift, other, spread, limits, window, coastBy);
  }

  /** The same with another spread. */
  public ReductionOptions spreading(Spread other) {
    return new ReductionOptions(anchor, drift, openEnd, other, limits, window, coastBy);
  }

  /** The same with other limits. */
  public ReductionOptions within(Limits other) {
    return new ReductionOptions(anchor, drift, openEnd, spread, other, window, coastBy);
  }

  /** The same in a given window. */
  public ReductionOptions between(Window other) {
    return new ReductionOptions(anchor, drift, openEnd, spread, limits, other, coastBy);
  }

  /** The same with levels brought to the reference speed and 20 degrees Celsius of the road. */
  public ReductionOptions coastingBy(TyreClass of) {
    return new ReductionOptions(anchor, drift, openEnd, spread, limits, window, of);
  }
}
