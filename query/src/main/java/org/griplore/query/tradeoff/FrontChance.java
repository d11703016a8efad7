package org.griplore.query.tradeoff;

import java.util.Random;
import org.griplore.query.statistics.ParetoFront;
import org.griplore.store.vocabulary.Direction;

/**
 * How surely a model is on the front: the share of draws in which it is, each effect drawn anew
 * from its estimate with its error. Errors are drawn independently of each other; those of models
 * that share tests are a little related, which is left out.
 */
final class FrontChance {
  private static final int DRAWS = 2000;

  private FrontChance() {}

  /** The share for each model; null when an axis has no errors. */
  static double[] of(Axis x, Axis y, long seed) {
    if (x.variance() == null || y.variance() == null) {
      return null;
    }
    int n = x.effect().length;
    Random random = new Random(seed);
    double[] share = new double[n];
    double[] drawnX = new double[n];
    double[] drawnY = new double[n];
    for (int draw = 0; draw < DRAWS; draw++) {
      for (int i = 0; i < n; i++) {
        drawnX[i] = x.effect()[i] + x.se(i) * random.nextGaussian();
        drawnY[i] = y.effect()[i] + y.se(i) * random.nextGaussian();
      }
      boolean[] front = ParetoFront.of(drawnX, drawnY, Direction.HIGH, Direction.HIGH);
      for (int i = 0; i < n; i++) {
        share[i] += front[i] ? 1.0 / DRAWS : 0;
      }
    }
    return share;
  }
}
