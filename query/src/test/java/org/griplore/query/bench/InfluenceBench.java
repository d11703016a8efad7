package org.griplore.query.bench;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.griplore.query.bench.GeneratedNetwork.Time;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.Influence;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;

/**
 * How long rank intervals and what estimates hang on take, beside the fit itself: the demo's size,
 * 2,000 models in 5,000 tests and in 20,000.
 */
public final class InfluenceBench {
  private InfluenceBench() {}

  /** Prints the best of three of each, in milliseconds. */
  public static void main(String[] args) {
    for (int[] size : new int[][] {{49, 60}, {2_000, 5_000}, {2_000, 20_000}}) {
      NetworkFit[] fit = new NetworkFit[1];
      GeneratedNetwork network = GeneratedNetwork.of(size[0], size[1], 8, Time.LOCAL, 1);
      double fitted =
          best(
              () -> fit[0] = NetworkFitter.fit(network.arms(), FitOptions.of(VarianceMethod.REML)));
      double scored = best(() -> fit[0].standings());
      int[] models =
          IntStream.range(0, size[0]).filter(m -> fit[0].component(m).orElse(-1) == 0).toArray();
      double ranks = best(() -> fit[0].ranks(models, 0.95, new SplittableRandom(1)));
      Influence[] influence = new Influence[1];
      double every = best(() -> influence[0] = fit[0].influence());
      double one = best(() -> influence[0].strongestTest(models[1], models[0]));
      double model = best(() -> influence[0].strongestModel(models[1], models[0]));
      double standings =
          best(
              () -> {
                for (int m : models) {
                  influence[0].strongestTest(m);
                }
              });
      System.out.printf(
          Locale.ROOT,
          "%d models, %d tests: fit %.1f, standings %.1f, ranks %.1f, influence of every test %.1f,"
              + " on one contrast %.2f, its strongest model %.1f, on every standing %.1f ms%n",
          size[0],
          size[1],
          fitted,
          scored,
          ranks,
          every,
          one,
          model,
          standings);
    }
  }

  private static double best(Runnable task) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 3; k++) {
      long begun = System.nanoTime();
      task.run();
      least = Math.min(least, (System.nanoTime() - begun) / 1e6);
    }
    return least;
  }
}
