package org.griplore.query.outlook;

import java.util.List;

/**
 * How far lines, steps and results differ, by the restricted likelihood of the differences inside
 * tests (each test given all before it), with a weak prior: each standard deviation is log-normal
 * around half the spread within tests, a factor e either way being one standard deviation. The
 * prior keeps a spread that few tests tell of from being nothing or endless (after Chung,
 * Rabe-Hesketh, Dorie, Gelman and Liu 2013, Psychometrika 78:685); many tests outweigh it.
 *
 * <p>The scatter of runs is not sought: it is pooled over results that tell it.
 */
final class VarianceComponentsFit {
  private static final double PRIOR_SD = 1;
  private static final double LOWEST = -5;
  private static final double HIGHEST = 2.5;
  private static final double FIRST_STEP = 0.5;
  private static final double CLOSE = 0.04;
  private static final int MOST_SWEEPS = 8;

  private final DescentForest descent;
  private final List<TestBlock> blocks;
  private final Needed needed;
  private final VarianceComponents yardstick;

  private VarianceComponentsFit(
      DescentForest descent, List<TestBlock> blocks, VarianceComponents yardstick) {
    this.descent = descent;
    this.blocks = blocks;
    this.needed = new Needed(descent, blocks, new int[0]);
    this.yardstick = yardstick;
  }

  /**
   * The components that these tests tell of.
   *
   * @param start components of fewer tests to start from; null for none
   * @return null when no two results inside a test differ
   */
  static VarianceComponents of(
      DescentForest descent, List<TestBlock> blocks, VarianceComponents start) {
    VarianceComponents yardstick = yardstick(descent, blocks);
    return yardstick.within() > 0
        ? new VarianceComponentsFit(descent, blocks, yardstick).best(start)
        : null;
  }

  /** What needs no search: scatter of runs, and spread within test and season class. */
  private static VarianceComponents yardstick(DescentForest descent, List<TestBlock> blocks) {
    double squares = 0;
    double scatterDf = 0;
    double shares = 0;
    int told = 0;
    double[] within = new double[2];
    double[] mixed = new double[2];
    for (TestBlock block : blocks) {
      for (int i = 0; i < block.y().length; i++) {
        if (!Double.isNaN(block.scatter()[i])) {
          squares += block.scatter()[i] * (block.runs()[i] - 1);
          scatterDf += block.runs()[i] - 1;
        }
        if (block.runs()[i] > 0) {
          shares += 1.0 / block.runs()[i];
          told++;
        }
      }
      for (int group = 0; group < DescentForest.GROUPS; group++) {
        add(within, block, descent, group);
      }
      add(mixed, block, descent, -1);
    }
    double spread = within[0] > 0 ? within[0] / within[1] : mixed[0] / Math.max(1, mixed[1]);
    double run = scatterDf == 0 ? 0 : squares / scatterDf;
    return new VarianceComponents(0, 0, 0, run, told == 0 ? 0 : shares / told, spread);
  }

  /** Adds squares around the mean of the models of a season class, and degrees of freedom. */
  private static void add(double[] sums, TestBlock block, DescentForest descent, int group) {
    double sum = 0;
    double squares = 0;
    int count = 0;
    double level = block.y()[0];
    for (int i = 0; i < block.y().length; i++) {
      if (group < 0 || descent.group()[block.models()[i]] == group) {
        double y = block.y()[i] - level;
        sum += y;
        squares += y * y;
        count++;
      }
    }
    if (count > 1) {
      sums[0] += Math.max(0, squares - sum * sum / count);
      sums[1] += count - 1;
    }
  }

  private VarianceComponents components(double[] logSd) {
    return new VarianceComponents(
        Math.exp(2 * logSd[0]),
        Math.exp(2 * logSd[1]),
        Math.exp(2 * logSd[2]),
        yardstick.run(),
        yardstick.usualShare(),
        yardstick.within());
  }

  private double centre() {
    return 0.5 * Math.log(yardstick.within()) - Math.log(2);
  }

  private double fit(double[] logSd) {
    LevelPosterior posterior = new LevelPosterior(descent, components(logSd));
    double sum = 0;
    for (int r = 0; r < blocks.size(); r++) {
      sum += posterior.take(blocks.get(r));
      for (int model : needed.endingAt(r)) {
        posterior.forget(model);
      }
    }
    for (double u : logSd) {
      double z = (u - centre()) / PRIOR_SD;
      sum -= z * z / 2;
    }
    return sum;
  }

  /** One standard deviation after the other, by the top of the parabola through three points. */
  private VarianceComponents best(VarianceComponents start) {
    double[] at = new double[3];
    for (int j = 0; j < 3; j++) {
      at[j] = centre();
    }
    if (start != null) {
      at[0] = Math.log(start.tauSquared()) / 2;
      at[1] = Math.log(start.line()) / 2;
      at[2] = Math.log(start.step()) / 2;
    }
    double[] steps = {FIRST_STEP, FIRST_STEP, FIRST_STEP};
    double best = fit(at);
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      double largest = 0;
      for (int j = 0; j < 3; j++) {
        double before = at[j];
        best = along(at, j, steps[j], best);
        double move = Math.abs(at[j] - before);
        steps[j] = Math.max(CLOSE, Math.min(FIRST_STEP, 2 * move));
        largest = Math.max(largest, move);
      }
      if (largest < CLOSE) {
        break;
      }
    }
    return components(at);
  }

  private double along(double[] at, int j, double h, double middle) {
    double u = at[j];
    double low = tried(at, j, u - h);
    double high = tried(at, j, u + h);
    double bend = low - 2 * middle + high;
    double shift = bend < 0 ? Math.max(-2 * h, Math.min(2 * h, h * (low - high) / (2 * bend))) : 0;
    double[] candidates = {u, u - h, u + h, u + shift};
    double[] values = {middle, low, high, shift == 0 ? middle : tried(at, j, u + shift)};
    int top = 0;
    for (int c = 1; c < values.length; c++) {
      top = values[c] > values[top] ? c : top;
    }
    at[j] = held(candidates[top]);
    return values[top];
  }

  private double tried(double[] at, int j, double value) {
    double[] with = at.clone();
    with[j] = held(value);
    return fit(with);
  }

  private double held(double u) {
    double level = 0.5 * Math.log(yardstick.within());
    return Math.max(level + LOWEST, Math.min(level + HIGHEST, u));
  }
}
