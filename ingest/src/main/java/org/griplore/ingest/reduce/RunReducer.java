package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * Corrects each candidate by the reference set, interpolated by position between its measurement
 * before and its measurement after: with n candidates between, candidate k is compared with R1 +
 * k/(n+1) (R2 - R1) (UN Regulation No. 109 annex 10, table 1; orders R-T1-R, R-T1-T2-R,
 * R-T1-T2-T3-R, chained cycles share the reference in the middle). The corrected figure stands on
 * the reference's mean of the day (ASTM F1650 method B); ratios are the same on any level.
 *
 * <p>Figures compared by ratio are multiplied by level/reference, levels in dB are shifted by level
 * - reference. Where a measurement of the reference before or after is missing, the nearest one
 * stands in, and {@link #openEnds} says so.
 */
public final class RunReducer {
  private final RunFigure.Kind kind;
  private final List<RunSet> sets = new ArrayList<>();
  private final List<RunSet> references = new ArrayList<>();

  /**
   * Takes the runs of one discipline.
   *
   * @param runs in any order; their sequence numbers count
   * @param kind the figure they are compared in
   */
  public RunReducer(List<LoggedRun> runs, RunFigure.Kind kind) {
    this.kind = kind;
    TreeMap<Integer, List<LoggedRun>> bySequence = new TreeMap<>();
    runs.forEach(
        run -> bySequence.computeIfAbsent(run.sequence(), s -> new ArrayList<>()).add(run));
    for (List<LoggedRun> together : bySequence.values()) {
      RunSet set = RunSet.of(together, kind);
      if (set != null) {
        sets.add(set);
        if (set.isReference()) {
          references.add(set);
        }
      }
    }
  }

  /** All sets in the order of the day. */
  public List<RunSet> sets() {
    return sets;
  }

  /** The measurements of the reference. */
  public List<RunSet> references() {
    return references;
  }

  /** The reference's mean of the day; NaN without one. */
  public double level() {
    return references.stream().mapToDouble(RunSet::mean).average().orElse(Double.NaN);
  }

  /** The candidates' results in the order of the day. */
  public List<Reduced> results() {
    List<Reduced> results = new ArrayList<>();
    double level = level();
    for (int i = 0; i < sets.size(); i++) {
      RunSet set = sets.get(i);
      if (!set.isReference()) {
        double reference = referenceAt(i);
        results.add(new Reduced(set, reference, level, corrected(set.mean(), reference, level)));
      }
    }
    return results;
  }

  private double corrected(double mean, double reference, double level) {
    if (Double.isNaN(reference)) {
      return mean;
    }
    return kind == RunFigure.Kind.LEVEL ? mean + level - reference : mean * level / reference;
  }

  private double referenceAt(int position) {
    int before = nearestReference(position, -1);
    int after = nearestReference(position, 1);
    if (before < 0 && after < 0) {
      return Double.NaN;
    }
    if (before < 0 || after < 0) {
      return sets.get(Math.max(before, after)).mean();
    }
    double share = (double) (position - before) / (after - before);
    double first = sets.get(before).mean();
    return first + share * (sets.get(after).mean() - first);
  }

  private int nearestReference(int position, int step) {
    for (int i = position; i >= 0 && i < sets.size(); i += step) {
      if (sets.get(i).isReference()) {
        return i;
      }
    }
    return -1;
  }

  /** Candidates that have a reference on one side only. */
  public List<RunSet> openEnds() {
    List<RunSet> open = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      boolean oneSided = nearestReference(i, -1) < 0 ^ nearestReference(i, 1) < 0;
      if (!sets.get(i).isReference() && oneSided) {
        open.add(sets.get(i));
      }
    }
    return open;
  }

  /** Drift of the reference from its first to its last measurement, as a fraction of the first. */
  public double drift() {
    if (references.size() < 2) {
      return Double.NaN;
    }
    double first = references.get(0).mean();
    return (references.get(references.size() - 1).mean() - first) / first;
  }
}
