package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;

/** Splits a network comparison into direct and indirect evidence by inverse variances. */
final class EvidenceSplitter {
  /** A direct share this close to one leaves no indirect evidence beyond rounding. */
  private static final double ALL = 1e-8;

  private final NetworkFit fit;

  EvidenceSplitter(NetworkFit fit) {
    this.fit = fit;
  }

  EvidenceSplit split(int first, int second) {
    ModelComparison network = fit.compare(first, second);
    if (network instanceof EstimatedComparison whole && first != second) {
      return split(first, second, whole);
    }
    return new EvidenceSplit(
        network, 0, Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
  }

  private EvidenceSplit split(int first, int second, EstimatedComparison whole) {
    TestRows rows = fit.basis().rows();
    double[] w = fit.weights();
    double sum = 0;
    double precision = 0;
    int tests = 0;
    ArmsOfModel arms = fit.basis().armsOfModel();
    int[] secondArms = arms.of(second);
    int j = 0;
    for (int arm : arms.of(first)) {
      int begin = rows.start[arms.testOfArm(arm)];
      int end = rows.start[arms.testOfArm(arm) + 1];
      while (j < secondArms.length && secondArms[j] < begin) {
        j++;
      }
      if (j < secondArms.length && secondArms[j] < end) {
        double inverse = 1 / (1 / w[arm] + 1 / w[secondArms[j]]);
        sum += inverse * (rows.y[arm] - rows.y[secondArms[j]]);
        precision += inverse;
        tests++;
      }
    }
    // variances here are in units of the fit, so that the split stands even without a scale
    double root = Math.sqrt(fit.scale());
    double vn = fit.covariance().unscaledDifference(fit.position(first), fit.position(second));
    if (tests == 0) {
      return new EvidenceSplit(
          whole,
          0,
          Optional.empty(),
          Optional.of(whole.estimate()),
          Optional.empty(),
          OptionalDouble.of(0));
    }
    double direct = sum / precision;
    double share = Math.min(1, vn * precision);
    Estimate directEstimate = fit.estimate(direct, root / Math.sqrt(precision));
    if (1 - share < ALL) {
      return new EvidenceSplit(
          whole,
          tests,
          Optional.of(directEstimate),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.of(share));
    }
    double vi = 1 / (1 / vn - precision);
    double indirect = vi * (whole.difference() / vn - sum);
    return new EvidenceSplit(
        whole,
        tests,
        Optional.of(directEstimate),
        Optional.of(fit.estimate(indirect, root * Math.sqrt(vi))),
        Optional.of(fit.estimate(direct - indirect, root * Math.sqrt(1 / precision + vi))),
        OptionalDouble.of(share));
  }
}
