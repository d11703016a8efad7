package org.griplore.query.network;

import java.util.OptionalDouble;

/**
 * Model effects without any variance, by conjugate gradients on the graph, test by test and without
 * forming a matrix. For answers that show no interval: a few milliseconds where a fit takes
 * seconds.
 */
public final class NetworkEstimates {
  private static final double TOLERANCE = 1e-12;

  private final Components components;
  private final ModelOrder order;
  private final double[] effects;

  private NetworkEstimates(Components components, ModelOrder order, double[] effects) {
    this.components = components;
    this.order = order;
    this.effects = effects;
  }

  /**
   * Common-effect estimates, the same as those of a fit with {@link VarianceMethod#NONE}.
   *
   * @param arms the results
   * @param typicalVariance variance of arms whose own is unknown, as in {@link FitOptions}
   */
  public static NetworkEstimates of(Arms arms, OptionalDouble typicalVariance) {
    TestRows rows = new TestRows(arms);
    Components components = new Components(rows, arms.models());
    ModelOrder order = ModelOrder.unordered(components);
    Laplacian laplacian = new Laplacian(rows, order);
    double[] w = new double[rows.arms];
    if (NetworkFitter.errors(rows, typicalVariance) == ErrorKnowledge.UNKNOWN) {
      java.util.Arrays.fill(w, 1);
    } else {
      w = GlsPoint.weights(NetworkFitter.filled(rows, typicalVariance), 0);
    }
    double[] right = laplacian.gather(laplacian.centred(w, laplacian.testWeights(w), rows.y));
    double[] x = new ConjugateGradients(laplacian, w).solve(right, TOLERANCE);
    return new NetworkEstimates(components, order, Centred.effects(order, components, x));
  }

  /** Part of a model, or empty when it was never tested against another. */
  public java.util.OptionalInt component(int model) {
    int component = components.ofModel[model];
    return component == Components.NONE
        ? java.util.OptionalInt.empty()
        : java.util.OptionalInt.of(component);
  }

  /** Effect of a model less the mean effect of its component's models. */
  public OptionalDouble effect(int model) {
    return components.ofModel[model] == Components.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(effects[order.position[model]]);
  }

  /** First model minus second; empty when no chain of tests connects them. */
  public OptionalDouble difference(int first, int second) {
    return components.ofModel[first] == Components.NONE
            || components.ofModel[first] != components.ofModel[second]
        ? OptionalDouble.empty()
        : OptionalDouble.of(effects[order.position[first]] - effects[order.position[second]]);
  }
}
