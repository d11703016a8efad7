package org.griplore.query.statistics;

import java.util.Optional;

/**
 * What steps from one generation to the next are usual in a discipline, so that the size of one
 * step has a meaning: the mean step, how far true steps differ, and each step drawn towards the
 * mean by as much as its own evidence is thin (empirical Bayes; Efron and Morris 1975, J American
 * Statistical Association 70:311; τ² by REML).
 *
 * <p>Steps are taken as independent. Steps that follow one another in a line share a model, and
 * steps measured in the same tests share its errors; both make the steps look a little more
 * different than they are.
 */
public final class StepDistribution {
  /** With fewer steps nothing is said about how steps are distributed. */
  public static final int FEWEST = 3;

  /** Below this many steps the between-step variance is a guess, and answers should say so. */
  public static final int FEW = 10;

  private final double[] steps;
  private final double[] variances;
  private final BetweenVariance between;

  private StepDistribution(double[] steps, double[] variances, BetweenVariance between) {
    this.steps = steps;
    this.variances = variances;
    this.between = between;
  }

  /**
   * From the archive's steps in one discipline.
   *
   * @param steps estimates, positive is better
   * @param ses their standard errors, above 0
   * @return empty for fewer than {@link #FEWEST} steps
   * @throws IllegalArgumentException when lengths differ, a step is not finite or a standard error
   *     not positive
   */
  public static Optional<StepDistribution> of(double[] steps, double[] ses) {
    return of(steps, ses, true);
  }

  /** As {@link #of(double[], double[])}, τ² by REML or else by moments. */
  public static Optional<StepDistribution> of(double[] steps, double[] ses, boolean reml) {
    Checks.sameLength("steps and standard errors", steps.length, ses.length);
    Checks.finite("step", steps);
    Checks.positive("standard error", ses);
    if (steps.length < FEWEST) {
      return Optional.empty();
    }
    double[] variances = new double[ses.length];
    for (int i = 0; i < ses.length; i++) {
      variances[i] = ses[i] * ses[i];
    }
    BetweenVariance between =
        reml ? BetweenVariance.reml(steps, variances) : BetweenVariance.moments(steps, variances);
    return Optional.of(new StepDistribution(steps.clone(), variances, between));
  }

  /** How many steps it rests on. */
  public int count() {
    return steps.length;
  }

  /** Whether it rests on fewer than {@link #FEW} steps. */
  public boolean fewSteps() {
    return steps.length < FEW;
  }

  /** The usual step. */
  public double mean() {
    return between.mean();
  }

  /** Standard error of the usual step. */
  public double meanSe() {
    return between.meanSe();
  }

  /** Standard deviation of true steps, 0 when the estimates differ no more than their errors. */
  public double spread() {
    return Math.sqrt(between.variance());
  }

  /** Where the true size of the next step is expected: mean ± t(n - 2) √(τ² + se²). */
  public Interval next(double level) {
    double half = Math.sqrt(between.variance() + between.meanSe() * between.meanSe());
    return Interval.around(between.mean(), Tails.student(level, steps.length - 2.0) * half);
  }

  /** The step drawn towards the mean: μ + B (y - μ), B = τ² / (τ² + se²). */
  public double shrunk(int step) {
    return between.mean() + trust(step) * (steps[step] - between.mean());
  }

  /** Standard error of the shrunk step: √(B se² + (1 - B)² se(μ)²); that of τ² is not in it. */
  public double shrunkSe(int step) {
    double b = trust(step);
    double rest = (1 - b) * between.meanSe();
    return Math.sqrt(b * variances[step] + rest * rest);
  }

  /** How much of the step's own estimate is kept, 0 to 1. */
  public double trust(int step) {
    return between.variance() / (between.variance() + variances[step]);
  }

  /**
   * The share of the other steps whose estimate is smaller, an equal one counting half; takes no
   * account of error.
   */
  public double rawPercentile(int step) {
    double below = 0;
    for (int i = 0; i < steps.length; i++) {
      if (i != step) {
        below += steps[i] < steps[step] ? 1 : steps[i] == steps[step] ? 0.5 : 0;
      }
    }
    return below / (steps.length - 1);
  }

  /**
   * The chance that a step drawn at random from the fitted distribution is smaller than the true
   * size of this one: Φ((shrunk - μ) / √(τ² + shrunkSe²)). Thin evidence gives about a half; where
   * true steps cannot be told apart (spread 0) it is a half exactly.
   */
  public double percentile(int step) {
    if (between.variance() == 0) {
      return 0.5;
    }
    double se = shrunkSe(step);
    double z = (shrunk(step) - between.mean()) / Math.sqrt(between.variance() + se * se);
    return Tails.normalAbove(-z);
  }
}
