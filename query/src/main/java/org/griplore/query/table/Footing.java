package org.griplore.query.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.griplore.query.estimate.Network;
import org.griplore.query.network.Estimate;

/**
 * One footing for the tyres of a column. Measured tyres stand where the like tests by themselves
 * put them; the others stand where all tests put them, moved as a whole so that the measured tyres
 * have the same mean on both scales.
 *
 * <p>With l the effects by like tests, f those by all tests, M the measured tyres: position p = l
 * for a tyre of M, p = f + mean(l over M) - mean(f over M) for any other. A difference of positions
 * is c'f + d'l, both cancelling. As f is the best linear estimate from all results and l another
 * estimate from some of them under the same variances, cov(f, l) = var(f) (Hausman 1978,
 * Econometrica 46:1251), hence var = Vf(c + d) + Vl(d) - Vf(d).
 */
final class Footing {
  /** Weights that should cancel do so up to this. */
  private static final double ROUNDING = 1e-12;

  private final Network all;
  private final Network like;
  private final int[] models;
  private final Basis[] basis;
  private final double[] position;
  private final int measured;

  /**
   * @param all every test
   * @param like the like tests; null when there are none
   * @param models positions of the tyres in the evidence
   * @param anchor the tyre whose part of the network counts; null: the part with most of the tyres
   */
  Footing(Network all, Network like, List<Integer> models, Integer anchor) {
    this.all = all;
    this.like = like;
    this.models = models.stream().mapToInt(Integer::intValue).toArray();
    this.basis = new Basis[this.models.length];
    this.position = new double[this.models.length];
    List<Integer> connected = part(all, models, anchor);
    List<Integer> alike = like == null ? List.of() : part(like, connected, anchor);
    this.measured = alike.size();
    double shift = mean(like, alike) - mean(all, alike);
    for (int i = 0; i < basis.length; i++) {
      if (alike.contains(models.get(i))) {
        basis[i] = Basis.MEASURED;
        position[i] = effect(like, this.models[i]);
      } else if (connected.contains(models.get(i))) {
        basis[i] = Basis.EXPECTED;
        position[i] = effect(all, this.models[i]) + shift;
      } else {
        basis[i] = Basis.NONE;
        position[i] = Double.NaN;
      }
    }
  }

  /**
   * The tyres of the anchor's part, or else of the part that has most of them, the first of equals.
   */
  private static List<Integer> part(Network network, List<Integer> models, Integer anchor) {
    OptionalInt wanted = anchor == null ? OptionalInt.empty() : network.part(anchor);
    List<Integer> best = List.of();
    for (int part = 0; part < network.parts(); part++) {
      int its = part;
      List<Integer> held = new ArrayList<>();
      for (int model : models) {
        if (network.part(model).equals(OptionalInt.of(its))) {
          held.add(model);
        }
      }
      if (wanted.isPresent() ? wanted.getAsInt() == part : isBefore(held, best, models)) {
        best = held;
      }
    }
    return best;
  }

  private static boolean isBefore(List<Integer> some, List<Integer> others, List<Integer> order) {
    return some.size() > others.size()
        || some.size() == others.size()
            && !some.isEmpty()
            && order.indexOf(some.get(0)) < order.indexOf(others.get(0));
  }

  private static double mean(Network network, List<Integer> models) {
    return models.stream().mapToDouble(model -> effect(network, model)).average().orElse(0);
  }

  private static double effect(Network network, int model) {
    return network.effect(model).orElseThrow().value();
  }

  /** What a tyre's position rests on. */
  Basis basis(int row) {
    return basis[row];
  }

  /** Where a tyre stands on the discipline's scale; NaN without evidence. */
  double position(int row) {
    return position[row];
  }

  /** How many tyres are measured. */
  int measured() {
    return measured;
  }

  /**
   * A combination of positions with its standard error, where one could be estimated.
   *
   * @param weights one a row, adding up to zero; zero where there is no evidence
   */
  Estimate combination(double[] weights) {
    double value = 0;
    double expected = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] != 0) {
        value += weights[i] * position[i];
        expected += basis[i] == Basis.EXPECTED ? weights[i] : 0;
      }
    }
    Optional<Estimate> whole = all.combination(models(false), picked(weights, false));
    if (whole.isEmpty() || whole.get().se().isEmpty()) {
      return new Estimate(value, OptionalDouble.empty(), OptionalInt.empty());
    }
    double variance = square(whole.get());
    if (measured > 0) {
      double[] byLike = new double[weights.length];
      for (int i = 0; i < weights.length; i++) {
        double weight = basis[i] == Basis.MEASURED ? weights[i] + expected / measured : 0;
        byLike[i] = Math.abs(weight) < ROUNDING ? 0 : weight;
      }
      variance += square(like.combination(models(true), picked(byLike, true)).orElseThrow());
      variance -= square(all.combination(models(true), picked(byLike, true)).orElseThrow());
    }
    return new Estimate(
        value, OptionalDouble.of(Math.sqrt(Math.max(0, variance))), whole.get().df());
  }

  private static double square(Estimate estimate) {
    return estimate.se().getAsDouble() * estimate.se().getAsDouble();
  }

  private int[] models(boolean measuredOnly) {
    return rows(measuredOnly).map(i -> models[i]).toArray();
  }

  private double[] picked(double[] weights, boolean measuredOnly) {
    return rows(measuredOnly).mapToDouble(i -> weights[i]).toArray();
  }

  private java.util.stream.IntStream rows(boolean measuredOnly) {
    return java.util.stream.IntStream.range(0, basis.length)
        .filter(i -> measuredOnly ? basis[i] == Basis.MEASURED : basis[i] != Basis.NONE);
  }
}
