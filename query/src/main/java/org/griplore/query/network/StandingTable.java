package org.griplore.query.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * Effects and P-scores of all compared models. The P-score of a model is the mean over the others
 * of its component of the probability that its effect is larger, given both estimates and the
 * standard error of their difference; the mean over a component is one half.
 */
final class StandingTable {
  private final NetworkFit fit;
  private final DoubleUnaryOperator below;

  StandingTable(NetworkFit fit) {
    this.fit = fit;
    this.below = fit.intervals().map(StandingTable::below).orElse(z -> 0.5);
  }

  /** The chance that goes with the intervals. */
  private static DoubleUnaryOperator below(IntervalScale scale) {
    if (scale.isNormal()) {
      return NormalTable::below;
    }
    StudentTable table = new StudentTable(scale.df());
    return z -> table.below(z / scale.widening());
  }

  List<ModelStanding> rows() {
    Components components = fit.basis().components();
    ArmsOfModel arms = fit.basis().armsOfModel();
    double[] scores = scores();
    List<ModelStanding> rows = new ArrayList<>();
    for (int m = 0; m < components.ofModel.length; m++) {
      if (components.ofModel[m] != Components.NONE) {
        Estimate effect = fit.effect(m).orElseThrow();
        rows.add(
            new ModelStanding(
                m,
                components.ofModel[m],
                effect,
                effect.se().isPresent() ? OptionalDouble.of(scores[m]) : OptionalDouble.empty(),
                arms.count(m)));
      }
    }
    rows.sort(
        Comparator.comparingInt(ModelStanding::component)
            .thenComparing(r -> -r.effect().value())
            .thenComparingInt(ModelStanding::model));
    return List.copyOf(rows);
  }

  /** P-score by model; zero where a model is in no component. */
  private double[] scores() {
    Components components = fit.basis().components();
    double[] scores = new double[components.ofModel.length];
    for (int component = 0; component < components.count(); component++) {
      int wanted = component;
      int[] members =
          IntStream.range(0, scores.length).filter(m -> components.ofModel[m] == wanted).toArray();
      for (int i = 0; i < members.length; i++) {
        int p = fit.position(members[i]);
        for (int j = 0; j < i; j++) {
          double better = better(p, fit.position(members[j]));
          scores[members[i]] += better;
          scores[members[j]] += 1 - better;
        }
      }
      for (int m : members) {
        scores[m] /= members.length - 1;
      }
    }
    return scores;
  }

  private double better(int p, int q) {
    double difference = fit.effectAt(p) - fit.effectAt(q);
    double sd = Math.sqrt(fit.covariance().ofDifference(p, q));
    if (sd > 0) {
      return below.applyAsDouble(difference / sd);
    }
    return difference > 0 ? 1 : difference < 0 ? 0 : 0.5;
  }
}
