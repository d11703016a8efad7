package org.griplore.query.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Worths of models from tests that only ranked them, with ties, each test a field of its own: the
 * Plackett-Luce model (Luce 1959; Plackett 1975, Applied Statistics 24:193) with ties in Davidson's
 * form (Davidson 1970, J American Statistical Association 65:317; for fields Turner, van Etten,
 * Firth and Kosmidis 2020, Computational Statistics 35:1027). With fields of two it is the
 * Bradley-Terry model.
 *
 * <p>Fitted by Newton steps on the log likelihood, which is concave in the log worths and log tie
 * parameters.
 *
 * <p>Where some models of a component never came behind others of it, their distance has no finite
 * estimate. Such a component is called separated and is fitted with a ghost: a model of worth 1
 * that each model of the component beats and loses to so many times. Its estimates then depend on
 * the ghost and the answer must say so.
 */
public final class PlackettLuce {
  /** Number of the ghost; never the number of a model. */
  static final int GHOST = Integer.MAX_VALUE;

  /** The ghost's weight where a caller has no reason for another. */
  public static final double USUAL_GHOST = 0.5;

  private static final int STEPS = 200;
  private static final double DONE = 1e-20;
  private static final double STILL = 1e-13;

  /** A log worth so far from its component's mean, or so uncertain, stands for an infinite one. */
  private static final double FAR = 15;

  private static final double VAGUE = 1000;

  private final int models;
  private final List<TieLikelihood.Choice> choices;
  private final double ghost;
  private final int[] orders;
  private final Dominance dominance;

  private PlackettLuce(int models, List<RankedField> fields, double ghost) {
    this.models = models;
    List<RankedField> telling = fields.stream().filter(f -> f.models().length > 1).toList();
    this.choices = telling.stream().flatMap(f -> TieLikelihood.choices(f).stream()).toList();
    this.ghost = ghost;
    this.dominance = new Dominance(models, telling);
    this.orders =
        telling.stream()
            .flatMap(field -> field.groups().stream())
            .mapToInt(group -> group.length)
            .filter(size -> size > 1)
            .distinct()
            .sorted()
            .toArray();
  }

  /**
   * Fits worths.
   *
   * @param models how many models there are, numbered from 0; those never ranked get no worth
   * @param fields the tests; fields of one say nothing
   * @param ghost weight of the ghost in separated components, 0 to refuse them
   * @throws IllegalArgumentException when a field names a model out of range, a component is
   *     separated and the ghost is 0, or ties alone leave a parameter without a finite estimate
   */
  public static PlackettLuceFit fit(int models, List<RankedField> fields, double ghost) {
    if (!(ghost >= 0 && Double.isFinite(ghost))) {
      throw new IllegalArgumentException("a ghost weighs 0 or more: " + ghost);
    }
    for (RankedField field : fields) {
      for (int model : field.models()) {
        if (model < 0 || model >= models) {
          throw new IllegalArgumentException("no model " + model);
        }
      }
    }
    return new PlackettLuce(models, fields, ghost).fit();
  }

  private PlackettLuceFit fit() {
    boolean[] separated = new boolean[dominance.components()];
    for (int component = 0; component < separated.length; component++) {
      separated[component] = dominance.levels(component).size() > 1;
      refuseWithoutGhost(component, separated[component]);
    }
    PlackettLuceFit fit = newton(separated);
    for (int component = 0; component < separated.length; component++) {
      if (!separated[component] && infinite(fit, component)) {
        separated[component] = true;
        refuseWithoutGhost(component, true);
      }
    }
    if (!Arrays.equals(separated, fit.separated())) {
      fit = newton(separated);
    }
    for (int order = 0; order < orders.length; order++) {
      if (!(Math.abs(fit.logTie(orders[order])) < FAR * 2)) {
        throw new IllegalArgumentException(
            "ties of %d end every choice that could: how often they do cannot be estimated"
                .formatted(orders[order]));
      }
    }
    return fit;
  }

  private void refuseWithoutGhost(int component, boolean separated) {
    if (separated && ghost == 0) {
      throw new IllegalArgumentException(
          "separated: never were the later placed before the earlier of "
              + dominance.levels(component));
    }
  }

  private boolean infinite(PlackettLuceFit fit, int component) {
    return IntStream.range(0, models)
        .filter(i -> dominance.component(i) == component)
        .anyMatch(i -> !(Math.abs(fit.effect(i)) < FAR && fit.se(i) < VAGUE));
  }

  private PlackettLuceFit newton(boolean[] separated) {
    int size = models + orders.length;
    double[] at = new double[size];
    TieLikelihood here = new TieLikelihood(models, orders);
    TieLikelihood there = new TieLikelihood(models, orders);
    double fit = evaluate(here, at, separated);
    DMatrixRMaj step = new DMatrixRMaj(size, 1);
    for (int i = 0; i < STEPS; i++) {
      LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(size);
      if (!solver.setA(identified(here.information, separated))) {
        break;
      }
      solver.solve(DMatrixRMaj.wrap(size, 1, here.slope.clone()), step);
      double gain = 0;
      for (int j = 0; j < size; j++) {
        gain += step.get(j) * here.slope[j];
      }
      double length = 1;
      double[] next = moved(at, step, length);
      double better = evaluate(there, next, separated);
      while (!(better >= fit - 1e-12 * Math.abs(fit)) && length > 1e-6) {
        length /= 2;
        next = moved(at, step, length);
        better = evaluate(there, next, separated);
      }
      at = next;
      fit = better;
      TieLikelihood spare = here;
      here = there;
      there = spare;
      if (gain < DONE * Math.max(1, Math.abs(fit)) || CommonOps_DDRM.elementMaxAbs(step) < STILL) {
        break;
      }
      if (Arrays.stream(at).anyMatch(value -> Math.abs(value) > 4 * FAR)) {
        break;
      }
    }
    double[] pure = at.clone();
    DMatrixRMaj covariance = identified(here.information, separated);
    if (!invert(covariance)) {
      CommonOps_DDRM.fill(covariance, 0);
      for (int i = 0; i < size; i++) {
        covariance.set(i, i, Double.MAX_VALUE);
      }
    }
    there.clear();
    for (TieLikelihood.Choice choice : choices) {
      there.add(choice, pure);
    }
    return new PlackettLuceFit(
        models, orders, pure, covariance, there.value(), dominance, separated.clone());
  }

  private static boolean invert(DMatrixRMaj matrix) {
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(matrix.numRows);
    if (!solver.setA(matrix.copy())) {
      return false;
    }
    solver.invert(matrix);
    return true;
  }

  private double evaluate(TieLikelihood likelihood, double[] at, boolean[] separated) {
    likelihood.clear();
    for (TieLikelihood.Choice choice : choices) {
      likelihood.add(choice, at);
    }
    for (int model = 0; model < models; model++) {
      int component = dominance.component(model);
      if (component >= 0 && separated[component]) {
        likelihood.add(new TieLikelihood.Choice(new int[] {model, GHOST}, 1, ghost), at);
        likelihood.add(new TieLikelihood.Choice(new int[] {GHOST, model}, 1, ghost), at);
      }
    }
    return likelihood.value();
  }

  private static double[] moved(double[] at, DMatrixRMaj step, double length) {
    double[] next = at.clone();
    for (int i = 0; i < next.length; i++) {
      next[i] += length * step.get(i);
    }
    return next;
  }

  /**
   * The information with a sum of 0 asked of each component that is not tied to the ghost, and 1
   * for models never ranked: invertible, and right for every contrast within a component.
   */
  private DMatrixRMaj identified(DMatrixRMaj information, boolean[] separated) {
    DMatrixRMaj whole = information.copy();
    List<List<Integer>> members = new ArrayList<>();
    for (int component = 0; component < separated.length; component++) {
      members.add(new ArrayList<>());
    }
    double scale = 0;
    for (int model = 0; model < models; model++) {
      scale = Math.max(scale, information.get(model, model));
      if (dominance.component(model) < 0) {
        whole.set(model, model, 1);
      } else {
        members.get(dominance.component(model)).add(model);
      }
    }
    for (int component = 0; component < separated.length; component++) {
      if (!separated[component]) {
        List<Integer> of = members.get(component);
        for (int i : of) {
          for (int j : of) {
            whole.add(i, j, scale / of.size());
          }
        }
      }
    }
    return whole;
  }
}
