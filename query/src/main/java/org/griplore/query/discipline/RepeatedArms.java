package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Results of models that stand in one test more than once: sets of the day. An arm with k of them
 * is their mean; its variance is that of the runs, Σv/k², or where the sets differ by more than
 * their runs, the pooled variance between sets over k (ISO 5725-2: what repeats within a day). Sets
 * that tell no runs leave the variance unknown.
 */
final class RepeatedArms {
  /** Fewer degrees of freedom make no variance between sets. */
  private static final int FEWEST = 3;

  private final Map<Integer, List<double[]>> ofArm = new HashMap<>();

  /** A further result of an arm; the arm's own is taken with the first of them. */
  void add(int arm, double ownY, double ownVariance, double y, double variance) {
    ofArm
        .computeIfAbsent(arm, first -> new ArrayList<>(List.of(new double[] {ownY, ownVariance})))
        .add(new double[] {y, variance});
  }

  /** Puts means in the place of the first results, and their variances. */
  void average(double[] y, double[] variance) {
    OptionalDouble pooled = degreesOfFreedom() < FEWEST ? OptionalDouble.empty() : pooledVariance();
    ofArm.forEach(
        (arm, sets) -> {
          double k = sets.size();
          y[arm] = mean(sets, 0);
          double ofRuns = mean(sets, 1) / k;
          variance[arm] =
              pooled.isPresent() && !Double.isNaN(ofRuns)
                  ? Math.max(ofRuns, pooled.getAsDouble() / k)
                  : ofRuns;
        });
  }

  /** Whether an arm is the mean of several results. */
  boolean holds(int arm) {
    return ofArm.containsKey(arm);
  }

  /** The variance of single results within a model and test; empty where none was repeated. */
  OptionalDouble pooledVariance() {
    double squares = 0;
    for (List<double[]> sets : ofArm.values()) {
      double mean = mean(sets, 0);
      for (double[] set : sets) {
        squares += (set[0] - mean) * (set[0] - mean);
      }
    }
    int df = degreesOfFreedom();
    return df == 0 ? OptionalDouble.empty() : OptionalDouble.of(squares / df);
  }

  private int degreesOfFreedom() {
    return ofArm.values().stream().mapToInt(sets -> sets.size() - 1).sum();
  }

  private static double mean(List<double[]> sets, int part) {
    double sum = 0;
    for (double[] set : sets) {
      sum += set[part];
    }
    return sum / sets.size();
  }
}
