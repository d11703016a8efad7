package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/**
 * Worths fitted by {@link PlackettLuce}. Effects are log worths, their mean 0 within a component.
 */
public final class PlackettLuceFit {
  private final int models;
  private final int[] orders;
  private final double[] effects;
  private final double[] logTies;
  private final DMatrixRMaj covariance;
  private final double logLikelihood;
  private final Dominance dominance;
  private final boolean[] separated;
  private final double[] ses;

  /**
   * How much one model is stronger than another.
   *
   * @param difference of the log worths
   * @param se its standard error
   */
  public record Contrast(double difference, double se) {
    /** The chance that the first is placed before the second when they do not tie. */
    public double chanceAhead() {
      return 1 / (1 + Math.exp(-difference));
    }

    /** The normal interval of the difference. */
    public Interval interval(double level) {
      return Interval.around(difference, Tails.normal(level) * se);
    }
  }

  PlackettLuceFit(
      int models,
      int[] orders,
      double[] parameters,
      DMatrixRMaj covariance,
      double logLikelihood,
      Dominance dominance,
      boolean[] separated) {
    this.models = models;
    this.orders = orders;
    this.covariance = covariance;
    this.logLikelihood = logLikelihood;
    this.dominance = dominance;
    this.separated = separated;
    this.logTies = Arrays.copyOfRange(parameters, models, parameters.length);
    this.effects = Arrays.copyOf(parameters, models);
    this.ses = new double[models];
    for (int component = 0; component < separated.length; component++) {
      centre(component);
    }
  }

  private void centre(int component) {
    int[] of = members(component);
    double mean = 0;
    double all = 0;
    double[] row = new double[of.length];
    for (int i = 0; i < of.length; i++) {
      mean += effects[of[i]] / of.length;
      for (int other : of) {
        row[i] += covariance.get(of[i], other) / of.length;
      }
      all += row[i] / of.length;
    }
    for (int i = 0; i < of.length; i++) {
      effects[of[i]] -= mean;
      ses[of[i]] = Math.sqrt(Math.max(0, covariance.get(of[i], of[i]) - 2 * row[i] + all));
    }
  }

  private int[] members(int component) {
    return IntStream.range(0, models).filter(i -> dominance.component(i) == component).toArray();
  }

  /** The component a model belongs to, from 0; -1 for a model never ranked against another. */
  public int component(int model) {
    return dominance.component(model);
  }

  /** Number of components between which nothing compares. */
  public int components() {
    return separated.length;
  }

  /** Whether a component had to be fitted with the ghost. */
  public boolean separated(int component) {
    return separated[component];
  }

  /**
   * The levels of a component, strongest first: never was a model of a later level placed before
   * one of an earlier. One level in a component that is separated only through its ties.
   */
  public List<List<Integer>> levels(int component) {
    return dominance.levels(component);
  }

  /**
   * Log worth against the mean of the component.
   *
   * @throws IllegalArgumentException for a model never ranked
   */
  public double effect(int model) {
    requireRanked(model);
    return effects[model];
  }

  /** Standard error of {@link #effect}. */
  public double se(int model) {
    requireRanked(model);
    return ses[model];
  }

  /** Share of the worths of the component. */
  public double worth(int model) {
    requireRanked(model);
    double sum = 0;
    for (int other : members(dominance.component(model))) {
      sum += Math.exp(effects[other] - effects[model]);
    }
    return 1 / sum;
  }

  /** Two models compared; empty when nothing compares them. */
  public Optional<Contrast> contrast(int first, int second) {
    if (component(first) < 0 || component(first) != component(second)) {
      return Optional.empty();
    }
    double variance =
        covariance.get(first, first)
            + covariance.get(second, second)
            - 2 * covariance.get(first, second);
    return Optional.of(
        new Contrast(effects[first] - effects[second], Math.sqrt(Math.max(0, variance))));
  }

  /** Sizes of ties that occurred, ascending. */
  public int[] tieOrders() {
    return orders.clone();
  }

  /**
   * Log of the tie parameter δ of ties of this size.
   *
   * @throws IllegalArgumentException when no such tie occurred
   */
  public double logTie(int size) {
    return logTies[order(size)];
  }

  /** Standard error of {@link #logTie}. */
  public double logTieSe(int size) {
    int at = models + order(size);
    return Math.sqrt(Math.max(0, covariance.get(at, at)));
  }

  /** Log likelihood of the fields, the ghost not counted. */
  public double logLikelihood() {
    return logLikelihood;
  }

  boolean[] separated() {
    return separated;
  }

  private int order(int size) {
    int at = Arrays.binarySearch(orders, size);
    if (at < 0) {
      throw new IllegalArgumentException("no tie of " + size);
    }
    return at;
  }

  private void requireRanked(int model) {
    if (dominance.component(model) < 0) {
      throw new IllegalArgumentException("model " + model + " was never ranked");
    }
  }
}
