package org.griplore.ingest.reduce;

import org.griplore.store.vocabulary.LoggedRun;

/**
 * What one run measured, as a figure that runs may be averaged in.
 *
 * <p>A braking run is averaged as mean deceleration, not as distance: AD = |v1^2 - v2^2| / (2 d)
 * with the speeds in m/s (UN Regulation No. 117 annex 5; the formula from memory, check the
 * official text). It takes the run's own speeds, and so corrects for their deviation. Valid for the
 * braking phase alone and for small deviations (SAE J299).
 */
public final class RunFigure {
  private static final double KMH = 3.6;

  private RunFigure() {}

  /** How a figure behaves when it is compared with the reference. */
  public enum Kind {
    /** m/s2, compared by ratio. */
    DECELERATION,
    /** s, compared by ratio. */
    TIME,
    /** dB, compared by difference. */
    LEVEL,
    /** Any other value, compared by ratio. */
    VALUE
  }

  /** What a run measured; null when it measured nothing that can be used. */
  public static Kind kind(LoggedRun run) {
    if (run.distanceM() != null && run.fromKmh() != null && run.toKmh() != null) {
      return Kind.DECELERATION;
    }
    if (run.levelDb() != null) {
      return Kind.LEVEL;
    }
    if (run.timeS() != null) {
      return Kind.TIME;
    }
    return run.value() != null ? Kind.VALUE : null;
  }

  /**
   * The run's figure of this kind; NaN when the run lacks it or it is not positive.
   *
   * @return m/s2, s, dB or the value's unit
   */
  public static double of(LoggedRun run, Kind kind) {
    Double figure =
        switch (kind) {
          case DECELERATION ->
              run.distanceM() == null || run.fromKmh() == null || run.toKmh() == null
                  ? null
                  : (Double) deceleration(run.fromKmh(), run.toKmh(), run.distanceM());
          case TIME -> run.timeS();
          case LEVEL -> run.levelDb();
          case VALUE -> run.value();
        };
    boolean positive = figure != null && (kind == Kind.LEVEL || figure > 0);
    return positive && Double.isFinite(figure) ? figure : Double.NaN;
  }

  /** Mean deceleration between two speeds, m/s2. */
  public static double deceleration(double fromKmh, double toKmh, double distanceM) {
    double from = fromKmh / KMH;
    double to = toKmh / KMH;
    return Math.abs(from * from - to * to) / (2 * distanceM);
  }

  /** Distance that a mean deceleration takes between two speeds, m. */
  public static double distance(double fromKmh, double toKmh, double deceleration) {
    return deceleration(fromKmh, toKmh, 1) / deceleration;
  }
}
