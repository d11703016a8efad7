package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.griplore.query.network.Arms;
import org.griplore.query.network.ExcessScatter;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.statistics.SharedVariance;

/**
 * A simulated archive of few tests with a stated truth: every tyre in every test, model i truly i
 * hundredths better than model 0, run-level standard deviations around one hundredth that differ
 * between tests and tyres, heterogeneity in multiples of that.
 *
 * @param arms the discipline that is judged
 * @param others disciplines of the same archive, their heterogeneity within a factor of about 1.35
 */
public record ThinArchive(Arms arms, List<Arms> others) {
  private static final double UNIT = 0.01;

  /** What tests tell of the spread of their runs. */
  public enum Spreads {
    /** Nothing. */
    NONE,
    /** The true variance of each mean. */
    EXACT,
    /** The spread of the four runs behind each mean. */
    FOUR_RUNS
  }

  /**
   * One archive.
   *
   * @param tau heterogeneity per arm, in multiples of the usual run-level standard deviation
   * @param others how many other disciplines there are
   */
  public static ThinArchive of(
      int tests, int tyres, Spreads spreads, double tau, int others, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Arms own = discipline(tests, tyres, spreads, tau, random);
    List<Arms> more = new ArrayList<>();
    for (int k = 0; k < others; k++) {
      double its = tau * Math.exp(0.3 * random.nextGaussian());
      more.add(discipline(tests, tyres, spreads, its, random));
    }
    return new ThinArchive(own, more);
  }

  /** The true effect of a model. */
  public static double truth(int model) {
    return UNIT * model;
  }

  private static Arms discipline(
      int tests, int tyres, Spreads spreads, double tau, SplittableRandom random) {
    int n = tests * tyres;
    int[] test = new int[n];
    int[] model = new int[n];
    double[] y = new double[n];
    double[] variance = new double[n];
    int[] runs = new int[n];
    for (int t = 0; t < tests; t++) {
      double level = random.nextGaussian();
      double ofTest = UNIT * Math.exp(0.35 * random.nextGaussian());
      for (int m = 0; m < tyres; m++) {
        int i = t * tyres + m;
        double sd = ofTest * Math.exp(0.2 * random.nextGaussian());
        test[i] = t;
        model[i] = m;
        y[i] = level + truth(m) + UNIT * tau * random.nextGaussian() + sd * random.nextGaussian();
        double chi = 0;
        for (int k = 0; k < 3; k++) {
          double z = random.nextGaussian();
          chi += z * z;
        }
        runs[i] = spreads == Spreads.FOUR_RUNS ? 4 : 0;
        variance[i] =
            switch (spreads) {
              case NONE -> Double.NaN;
              case EXACT -> sd * sd;
              case FOUR_RUNS -> sd * sd * chi / 3;
            };
      }
    }
    RunVariances drawn = RunVariances.of(variance, runs);
    return new Arms(tests, tyres, test, model, y, drawn.variance(), drawn.df());
  }

  /** The fit as answers have it: intervals by scatter, with what the other disciplines show. */
  public NetworkFit fit() {
    NetworkFit own = NetworkFitter.fit(arms, FitOptions.of(VarianceMethod.REML));
    return shared().map(own::sharing).orElse(own);
  }

  private Optional<SharedVariance> shared() {
    List<ExcessScatter> told =
        others.stream().map(ExcessScatter::of).flatMap(Optional::stream).toList();
    return SharedVariance.of(
        told.stream().mapToDouble(ExcessScatter::ratio).toArray(),
        told.stream().mapToDouble(ExcessScatter::df).toArray());
  }
}
