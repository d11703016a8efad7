package org.griplore.query.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.griplore.query.discipline.Network;
import org.griplore.query.network.Estimate;

/**
 * One footing for the tyres of a column. All tests put every tyre on one scale; tyres that stood in
 * like tests are then set apart from each other as those tests by themselves have it, around the
 * mean that all tests give them together.
 *
 * <p>With f the effects by all tests, l those by like tests, M the tyres of one connected part of
 * the like tests: position p = mean(f over M) + l - mean(l over M) for a tyre of M, p = f for one
 * in no like test. A difference of positions is c'f + d'l with both cancelling, d inside each part.
 * As f is the best linear estimate from all results and l another estimate from some of them under
 * the same variances, cov(f, l) = var(f) (Hausman 1978, Econometrica 46:1251), hence var = Vf(c +
 * d) + Vl(d) - Vf(d), where c + d are the weights asked for.
 */
final class Footing {
  /** Weights that should cancel do so up to this. */
  private static final double ROUNDING = 1e-12;

  private final Network all;
  private final Network like;
  private final int[] models;
  private final FigureBasis[] basis;
  private final double[] position;
  private final List<List<Integer>> parts = new ArrayList<>();

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
    this.basis = new FigureBasis[this.models.length];
    this.position = new double[this.models.length];
    List<Integer> connected = part(all, models, anchor);
    for (int i = 0; i < basis.length; i++) {
      boolean known = connected.contains(this.models[i]);
      basis[i] = known ? FigureBasis.EXPECTED : FigureBasis.NONE;
      position[i] = known ? effect(all, this.models[i]) : Double.NaN;
    }
    if (like != null) {
      for (int part = 0; part < like.components(); part++) {
        place(rowsOf(connected, part));
      }
    }
  }

  /** The rows whose tyres are in a part of the like tests. */
  private List<Integer> rowsOf(List<Integer> among, int part) {
    List<Integer> rows = new ArrayList<>();
    for (int i = 0; i < models.length; i++) {
      if (among.contains(models[i]) && like.component(models[i]).equals(OptionalInt.of(part))) {
        rows.add(i);
      }
    }
    return rows;
  }

  private void place(List<Integer> rows) {
    if (rows.isEmpty()) {
      return;
    }
    double shift = shift(rows);
    for (int row : rows) {
      basis[row] = FigureBasis.MEASURED;
      position[row] = effect(like, models[row]) + shift;
    }
    parts.add(rows);
  }

  /** From the scale of a part of the like tests to that of all. */
  private double shift(List<Integer> rows) {
    return rows.stream()
        .mapToDouble(row -> effect(all, models[row]) - effect(like, models[row]))
        .average()
        .orElseThrow();
  }

  /** What a tyre at position zero shows in a like test with this effect that a row stood in. */
  double level(int row, double testEffect) {
    for (List<Integer> part : parts) {
      if (part.contains(row)) {
        return testEffect - shift(part);
      }
    }
    throw new IllegalArgumentException("row " + row + " is not measured");
  }

  /**
   * The tyres of the anchor's part, or else of the part that has most of them, the first of equals.
   */
  private static List<Integer> part(Network network, List<Integer> models, Integer anchor) {
    OptionalInt wanted = anchor == null ? OptionalInt.empty() : network.component(anchor);
    List<Integer> best = List.of();
    for (int part = 0; part < network.components(); part++) {
      int its = part;
      List<Integer> held = new ArrayList<>();
      for (int model : models) {
        if (network.component(model).equals(OptionalInt.of(its))) {
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

  private static double effect(Network network, int model) {
    return network.effect(model).orElseThrow().value();
  }

  /** What a tyre's position rests on. */
  FigureBasis basis(int row) {
    return basis[row];
  }

  /** Where a tyre stands on the discipline's scale; NaN without evidence. */
  double position(int row) {
    return position[row];
  }

  /** Whether any tyre is measured. */
  boolean hasMeasured() {
    return !parts.isEmpty();
  }

  /**
   * A combination of positions with its standard error, where one could be estimated.
   *
   * @param weights one a row, adding up to zero; zero where there is no evidence
   */
  Estimate combination(double[] weights) {
    double value = 0;
    for (int i = 0; i < weights.length; i++) {
      value += weights[i] == 0 ? 0 : weights[i] * position[i];
    }
    Optional<Estimate> whole = all.combination(models(false), picked(weights, false));
    if (whole.isEmpty() || whole.get().se().isEmpty()) {
      return Estimate.alone(value);
    }
    double[] byLike = byLike(weights);
    double variance = square(whole.get());
    if (Arrays.stream(byLike).anyMatch(weight -> weight != 0)) {
      variance += square(like.combination(models(true), picked(byLike, true)).orElseThrow());
      variance -= square(all.combination(models(true), picked(byLike, true)).orElseThrow());
    }
    return new Estimate(
        value, OptionalDouble.of(Math.sqrt(Math.max(0, variance))), whole.get().scale());
  }

  /** The weights less their mean in each part of the like tests; zero for tyres in none. */
  private double[] byLike(double[] weights) {
    double[] byLike = new double[weights.length];
    for (List<Integer> part : parts) {
      double mean = part.stream().mapToDouble(row -> weights[row]).average().orElseThrow();
      for (int row : part) {
        double weight = weights[row] - mean;
        byLike[row] = Math.abs(weight) < ROUNDING ? 0 : weight;
      }
    }
    return byLike;
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
        .filter(
            i -> measuredOnly ? basis[i] == FigureBasis.MEASURED : basis[i] != FigureBasis.NONE);
  }
}
