package org.griplore.query.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Effects and P-scores of all compared models. The P-score of a model is the mean over the others
 * of its part of the normal probability that its effect is larger, given both estimates and the
 * standard error of their difference; the mean over a part is one half.
 */
final class StandingTable {
  private final NetworkFit fit;

  StandingTable(NetworkFit fit) {
    this.fit = fit;
  }

  List<ModelStanding> rows() {
    Parts parts = fit.basis().parts();
    ArmsOfModel arms = fit.basis().armsOfModel();
    double[] scores = scores();
    List<ModelStanding> rows = new ArrayList<>();
    for (int m = 0; m < parts.ofModel.length; m++) {
      if (parts.ofModel[m] != Parts.NONE) {
        Estimate effect = fit.effect(m).orElseThrow();
        rows.add(
            new ModelStanding(
                m,
                parts.ofModel[m],
                effect,
                effect.se().isPresent() ? OptionalDouble.of(scores[m]) : OptionalDouble.empty(),
                arms.count(m)));
      }
    }
    rows.sort(
        Comparator.comparingInt(ModelStanding::part)
            .thenComparing(r -> -r.effect().value())
            .thenComparingInt(ModelStanding::model));
    return List.copyOf(rows);
  }

  /** P-score by model; zero where a model is in no part. */
  private double[] scores() {
    Parts parts = fit.basis().parts();
    int models = parts.ofModel.length;
    double[] scores = new double[models];
    int[][] members = new int[parts.count()][];
    for (int part = 0; part < members.length; part++) {
      int wanted = part;
      members[part] = IntStream.range(0, models).filter(m -> parts.ofModel[m] == wanted).toArray();
    }
    IntStream models1 = IntStream.range(0, models);
    (models > 200 ? models1.parallel() : models1)
        .forEach(
            m -> {
              if (parts.ofModel[m] != Parts.NONE) {
                scores[m] = score(m, members[parts.ofModel[m]]);
              }
            });
    return scores;
  }

  private double score(int model, int[] others) {
    int p = fit.position(model);
    double sum = 0;
    for (int other : others) {
      if (other != model) {
        int q = fit.position(other);
        double difference = fit.effectAt(p) - fit.effectAt(q);
        double sd = Math.sqrt(fit.covariance().ofDifference(p, q));
        if (sd > 0) {
          sum += TailProbability.normalBelow(difference / sd);
        } else {
          sum += difference > 0 ? 1 : difference < 0 ? 0 : 0.5;
        }
      }
    }
    return sum / (others.length - 1);
  }
}
