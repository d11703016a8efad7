package org.griplore.query.log;

import java.util.List;
import java.util.Locale;
import org.griplore.store.archive.ReductionRecord;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Reduction;

/**
 * How a log's runs of one discipline became results.
 *
 * @param discipline catalogue key
 * @param file the log's file
 * @param measure what was averaged
 * @param unit symbol
 * @param fromKmh nominal speeds of the window; null where none apply
 * @param compared how the difference of a set is formed, in a sentence
 * @param level the reference's figure that results stand on; null without a reference
 * @param levelMeans what that level means
 * @param trace what the reference did over the day
 * @param traceSaid the same with its figures, in a sentence
 * @param slope change of the reference a place
 * @param trendP p of the trend
 * @param stepAfter sequence number after which a step fits best
 * @param stepSize later mean less earlier mean
 * @param stepP p of the step, corrected for the search
 * @param cycles a sentence each
 * @param limits a sentence each
 */
public record LogReduced(
    String discipline,
    String file,
    String measure,
    String unit,
    Double fromKmh,
    Double toKmh,
    String compared,
    Double level,
    String levelMeans,
    String trace,
    String traceSaid,
    Double slope,
    Double trendP,
    Integer stepAfter,
    Double stepSize,
    Double stepP,
    List<String> cycles,
    List<String> limits) {
  static LogReduced of(ReductionRecord record) {
    Reduction reduction = record.reduction();
    Reduction.Trace trace = reduction.trace();
    return new LogReduced(
        reduction.discipline(),
        record.file(),
        reduction.measure(),
        reduction.unit().symbol(),
        reduction.fromKmh(),
        reduction.toKmh(),
        compared(reduction),
        reduction.level(),
        reduction.levelWords(),
        trace.words(),
        said(trace, reduction.unit().symbol()),
        trace.slope(),
        trace.trendP(),
        trace.stepAfter(),
        trace.stepSize(),
        trace.stepP(),
        reduction.cycles(),
        reduction.limits());
  }

  private static String compared(Reduction reduction) {
    boolean less = reduction.better() == Direction.LOW;
    String what = reduction.measure();
    if (!reduction.byRatio()) {
      return "difference of " + what + " to the reference there: plus is better";
    }
    return less
        ? "per cent by which the reference's " + what + " is above the tyre's: plus is better"
        : "per cent by which the tyre's " + what + " is above the reference's: plus is better";
  }

  private static String said(Reduction.Trace trace, String unit) {
    StringBuilder said = new StringBuilder(trace.words());
    if (trace.slope() != null) {
      said.append(
          "; trend %s %s a place%s".formatted(signed(trace.slope()), unit, chance(trace.trendP())));
    }
    if (trace.stepSize() != null) {
      said.append(
          "; best step %s %s after sequence %d%s"
              .formatted(signed(trace.stepSize()), unit, trace.stepAfter(), chance(trace.stepP())));
    }
    return said.toString();
  }

  private static String signed(double change) {
    return String.format(Locale.ROOT, "%+.2g", change).replace('-', '\u2212');
  }

  private static String chance(Double p) {
    return p == null
        ? ""
        : p < 0.001 ? " (p < 0.001)" : String.format(Locale.ROOT, " (p = %.3f)", p);
  }
}
