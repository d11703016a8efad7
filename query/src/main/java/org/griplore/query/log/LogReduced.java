package org.griplore.query.log;

import java.util.List;
import org.griplore.store.archive.ReductionRecord;
import org.griplore.store.vocabulary.Reduction;

/**
 * How a log's runs of one discipline became results.
 *
 * @param discipline catalogue key
 * @param file the log's file
 * @param measure what was averaged
 * @param unit symbol
 * @param fromKmh nominal speeds of the window; null where none apply
 * @param level the reference's figure that results stand on; null without a reference
 * @param levelMeans what that level means
 * @param trace what the reference did over the day
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
    Double level,
    String levelMeans,
    String trace,
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
        reduction.level(),
        reduction.levelWords(),
        trace.words(),
        trace.slope(),
        trace.trendP(),
        trace.stepAfter(),
        trace.stepSize(),
        trace.stepP(),
        reduction.cycles(),
        reduction.limits());
  }
}
