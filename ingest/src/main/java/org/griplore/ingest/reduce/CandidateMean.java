package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Objects;
import org.griplore.ingest.reduce.run.ResultUnit;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.ingest.reduce.sample.Moments;

/** Joins the sets of one candidate to its result. */
final class CandidateMean {
  private CandidateMean() {}

  static ReducedResult of(
      List<SetResult> sets, RunMeasure measure, Double level, ResultUnit resultUnit) {
    List<SetResult> valid = sets.stream().filter(set -> set.standing().isValid()).toList();
    List<SetResult> used = valid.isEmpty() ? sets : valid;
    Effect effect =
        used.stream().anyMatch(set -> set.effect() == null)
            ? null
            : Effect.mean(used.stream().map(SetResult::effect).toList());
    double figure =
        effect == null ? plainMean(used, measure) : Correction.at(level, effect.value(), measure);
    double corrected = resultUnit.of(figure);
    Double error = effect == null ? null : effect.standardError();
    return new ReducedResult(
        sets.get(0).set().model(),
        measure,
        sets,
        used,
        effect,
        corrected,
        error == null ? null : resultUnit.error(error, corrected),
        spread(used, measure, corrected, resultUnit),
        used.stream().mapToInt(set -> set.set().count()).sum(),
        resultUnit.unit());
  }

  private static double plainMean(List<SetResult> used, RunMeasure measure) {
    double[] means =
        used.stream()
            .map(SetResult::set)
            .mapToDouble(set -> measure.byRatio() ? Math.log(set.mean()) : set.mean())
            .toArray();
    double mean = Moments.of(means).mean();
    return used.size() == 1 ? used.get(0).set().mean() : measure.byRatio() ? Math.exp(mean) : mean;
  }

  /** Pooled over the sets, relative to each set's mean where ratios are formed. */
  private static Double spread(
      List<SetResult> used, RunMeasure measure, double corrected, ResultUnit resultUnit) {
    double squares = 0;
    int freedom = 0;
    for (SetStatistics set : used.stream().map(SetResult::set).toList()) {
      if (Objects.nonNull(set.deviation())) {
        double deviation = set.deviation() / (measure.byRatio() ? set.mean() : 1);
        squares += (set.count() - 1) * deviation * deviation;
        freedom += set.count() - 1;
      }
    }
    return freedom == 0 ? null : resultUnit.error(Math.sqrt(squares / freedom), corrected);
  }
}
