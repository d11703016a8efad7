package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Optional;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.vocabulary.Unit;

/**
 * A log of one discipline, reduced.
 *
 * @param measure what its runs measured
 * @param window nominal speeds; null where none apply
 * @param anchor the level that was asked for
 * @param level the reference's figure that corrected values stand on, in the measure's unit; null
 *     without a reference
 * @param levelWords what that level means
 * @param sets all sets in the order of the day
 * @param cycles candidates with the references beside them
 * @param trace what the reference did over the day; the raw control trace is in {@code sets}
 * @param pooledVariance variance of one run pooled over the sets, relative where ratios are formed;
 *     null when no set has two runs
 * @param results a result each candidate, in the order of the day
 * @param remarks what a reader must know
 */
public record ReducedLog(
    RunMeasure measure,
    Window window,
    Anchor anchor,
    Double level,
    String levelWords,
    List<SetStatistics> sets,
    List<ReferenceCycle> cycles,
    ControlTrace trace,
    Double pooledVariance,
    List<ReducedResult> results,
    List<Remark> remarks) {
  /** Keeps the lists from changing. */
  public ReducedLog {
    sets = List.copyOf(sets);
    cycles = List.copyOf(cycles);
    results = List.copyOf(results);
    remarks = List.copyOf(remarks);
  }

  /** Unit of set means, references and the level; inverse distances have none of their own. */
  public Unit figureUnit() {
    return measure.figureUnit();
  }

  /** The usable measurements of the reference. */
  public List<SetStatistics> references() {
    return sets.stream().filter(set -> set.isReference() && set.isUsable()).toList();
  }

  /** A candidate's result. */
  public Optional<ReducedResult> of(String model) {
    return results.stream().filter(result -> result.model().equals(model)).findFirst();
  }

  /**
   * Covariances of the effects in the order of {@link #results}; null where the variance is unknown
   * or there is no reference.
   */
  public Double[][] covariances() {
    int n = results.size();
    Double[][] covariances = new Double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        Effect mine = results.get(i).effect();
        Effect theirs = results.get(j).effect();
        covariances[i][j] = mine == null || theirs == null ? null : mine.covariance(theirs);
      }
    }
    return covariances;
  }
}
