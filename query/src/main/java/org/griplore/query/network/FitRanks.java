package org.griplore.query.network;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.griplore.query.statistics.JointErrors;
import org.griplore.query.statistics.RankIntervals;

/** Rank intervals of models from the joint covariance of a fit. */
final class FitRanks {
  /**
   * Up to so many models errors are drawn from their own covariance, beyond from the whole fit's.
   */
  private static final int DENSE = 300;

  private final NetworkFit fit;

  FitRanks(NetworkFit fit) {
    this.fit = fit;
  }

  /**
   * @param models of one component
   */
  Optional<RankIntervals> of(int[] models, double level, SplittableRandom random) {
    if (fit.intervals().isEmpty()) {
      return Optional.empty();
    }
    IntervalScale scale = fit.intervals().get();
    int[] at = Arrays.stream(models).map(fit::position).toArray();
    double[] values = Arrays.stream(at).mapToDouble(fit::effectAt).toArray();
    RankIntervals.PairSpread spread =
        (i, j) -> scale.widening() * Math.sqrt(fit.covariance().ofDifference(at[i], at[j]));
    RankIntervals.ErrorDraw errors =
        at.length <= DENSE ? JointErrors.of(at.length, spread) : wholeFit(at, scale.widening());
    return Optional.of(RankIntervals.of(values, spread, errors, scale.df(), level, random));
  }

  private RankIntervals.ErrorDraw wholeFit(int[] at, double widening) {
    ModelOrder order = fit.basis().laplacian().order;
    double unit = widening * Math.sqrt(fit.scale());
    return (random, into) -> {
      double[] normal = new double[order.size()];
      for (int p = 0; p < normal.length; p++) {
        normal[p] = random.nextGaussian();
      }
      double[] drawn = fit.point().factor.solveUpper(normal);
      for (int i = 0; i < at.length; i++) {
        into[i] = order.grounded[at[i]] ? 0 : unit * drawn[at[i]];
      }
    };
  }
}
