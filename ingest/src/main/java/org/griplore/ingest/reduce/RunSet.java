package org.griplore.ingest.reduce;

import java.util.List;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * One set of tyres at its place in the order of the day.
 *
 * @param runs its runs, in the log's order
 * @param mean mean of the usable runs' figures
 * @param spread their standard deviation (n - 1); NaN for fewer than two
 * @param count how many runs were usable
 */
public record RunSet(List<LoggedRun> runs, double mean, double spread, int count) {
  /** The set of these runs, or null when none of them is usable. */
  static RunSet of(List<LoggedRun> runs, RunFigure.Kind kind) {
    double[] figures =
        runs.stream()
            .mapToDouble(run -> RunFigure.of(run, kind))
            .filter(figure -> !Double.isNaN(figure))
            .toArray();
    if (figures.length == 0) {
      return null;
    }
    double mean = 0;
    for (double figure : figures) {
      mean += figure / figures.length;
    }
    double squares = 0;
    for (double figure : figures) {
      squares += (figure - mean) * (figure - mean);
    }
    double spread = figures.length < 2 ? Double.NaN : Math.sqrt(squares / (figures.length - 1));
    return new RunSet(List.copyOf(runs), mean, spread, figures.length);
  }

  /** The place in the order of the day. */
  public int sequence() {
    return runs.get(0).sequence();
  }

  /** The tyre's model. */
  public String model() {
    return runs.get(0).model();
  }

  /** Whether it is the reference set. */
  public boolean isReference() {
    return runs.get(0).role() == LoggedRun.Role.REFERENCE;
  }

  /** Coefficient of variation, as a fraction; NaN for fewer than two runs. */
  public double variation() {
    return spread / mean;
  }
}
