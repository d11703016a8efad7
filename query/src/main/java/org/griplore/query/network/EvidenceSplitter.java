package org.griplore.query.network;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
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
        network,
        0,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        false);
  }

  /**
   * Whether a chain of tests leads from one to the other without any that held both: inside tests
   * that held both, other tyres bring nothing that is independent of the two.
   */
  private boolean isChained(int first, int second) {
    TestRows rows = fit.basis().rows();
    ArmsOfModel arms = fit.basis().armsOfModel();
    BitSet both = new BitSet(rows.tests);
    BitSet ofFirst = new BitSet(rows.tests);
    for (int arm : arms.of(first)) {
      ofFirst.set(arms.testOfArm(arm));
    }
    for (int arm : arms.of(second)) {
      both.set(arms.testOfArm(arm));
    }
    both.and(ofFirst);
    BitSet seenTests = (BitSet) both.clone();
    BitSet seen = new BitSet();
    Deque<Integer> open = new ArrayDeque<>(List.of(first));
    seen.set(first);
    while (!open.isEmpty()) {
      for (int arm : arms.of(open.remove())) {
        int test = arms.testOfArm(arm);
        if (seenTests.get(test)) {
          continue;
        }
        seenTests.set(test);
        for (int other = rows.start[test]; other < rows.start[test + 1]; other++) {
          int model = rows.model[other];
          if (model == second) {
            return true;
          }
          if (!seen.get(model)) {
            seen.set(model);
            open.add(model);
          }
        }
      }
    }
    return false;
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
          OptionalDouble.of(0),
          true);
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
          OptionalDouble.of(share),
          false);
    }
    double vi = 1 / (1 / vn - precision);
    double indirect = vi * (whole.difference() / vn - sum);
    return new EvidenceSplit(
        whole,
        tests,
        Optional.of(directEstimate),
        Optional.of(fit.estimate(indirect, root * Math.sqrt(vi))),
        Optional.of(fit.estimate(direct - indirect, root * Math.sqrt(1 / precision + vi))),
        OptionalDouble.of(share),
        isChained(first, second));
  }
}
