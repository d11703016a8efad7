package org.griplore.query.outlook;

import java.util.TreeSet;

/** How predictions did: gathered test by test, on the discipline's scale. */
final class IntervalTally {
  /** Levels of the intervals that are judged. */
  static final double[] LEVELS = {0.5, 0.8, 0.95};

  private final int[] covered = new int[LEVELS.length];
  private final TreeSet<Integer> entries = new TreeSet<>();
  private int tests;
  private int results;
  private int unseen;
  private double squares;
  private double naiveSquares;
  private final int[] stepsCovered = new int[LEVELS.length];
  private int steps;
  private double stepSquares;
  private double naiveStepSquares;
  private int places;
  private int placesCovered;
  private final Pairs agreement = new Pairs();
  private final Pairs naiveAgreement = new Pairs();

  /** Pairs inside tests, for Kendall's tau-b over all of them. */
  private static final class Pairs {
    private long agreement;
    private long told;
    private long differ;

    void add(double predicted, double found) {
      int p = (int) Math.signum(predicted);
      int f = (int) Math.signum(found);
      agreement += (long) p * f;
      told += (long) p * p;
      differ += (long) f * f;
    }

    Double tau() {
      return told == 0 || differ == 0
          ? null
          : (Double) (agreement / Math.sqrt((double) told * differ));
    }
  }

  /** Counts a test. */
  void addTest() {
    tests++;
  }

  /**
   * Counts a result.
   *
   * @param factors half widths of the intervals in standard deviations, one a level
   * @param history whether the model itself had been tested before
   */
  void add(
      int entry,
      double found,
      double predicted,
      double sd,
      double[] factors,
      double naive,
      boolean history) {
    entries.add(entry);
    results++;
    unseen += history ? 0 : 1;
    double error = found - predicted;
    squares += error * error;
    naiveSquares += (found - naive) * (found - naive);
    for (int level = 0; level < factors.length; level++) {
      covered[level] += Math.abs(error) <= factors[level] * sd ? 1 : 0;
    }
  }

  /**
   * Counts a step from a model to its successor inside a test.
   *
   * @param factors as in {@link #add}
   */
  void addStep(double found, double predicted, double sd, double[] factors, double naive) {
    steps++;
    double error = found - predicted;
    stepSquares += error * error;
    naiveStepSquares += (found - naive) * (found - naive);
    for (int level = 0; level < factors.length; level++) {
      stepsCovered[level] += Math.abs(error) <= factors[level] * sd ? 1 : 0;
    }
  }

  /** Counts a place inside a test, and whether it lay in the middle 80 % of drawn tests. */
  void addPlace(boolean held) {
    places++;
    placesCovered += held ? 1 : 0;
  }

  /** Counts a pair inside a test: first less second, predicted, by the naive rule, and found. */
  void addPair(double predicted, double naive, double found) {
    agreement.add(predicted, found);
    naiveAgreement.add(naive, found);
  }

  /** Entries that were predicted. */
  Iterable<Integer> entries() {
    return entries;
  }

  int tests() {
    return tests;
  }

  int results() {
    return results;
  }

  /** Results of models that were never tested before, predicted from a predecessor. */
  int unseen() {
    return unseen;
  }

  int covered(int level) {
    return covered[level];
  }

  /** Root mean square of the errors. */
  double error() {
    return Math.sqrt(squares / results);
  }

  double naiveError() {
    return Math.sqrt(naiveSquares / results);
  }

  int steps() {
    return steps;
  }

  /** Share of steps inside their intervals of a level; null without steps. */
  Double stepCoverage(int level) {
    return steps == 0 ? null : (Double) ((double) stepsCovered[level] / steps);
  }

  /** Root mean square of the steps' errors; null without steps. */
  Double stepError() {
    return steps == 0 ? null : (Double) Math.sqrt(stepSquares / steps);
  }

  Double naiveStepError() {
    return steps == 0 ? null : (Double) Math.sqrt(naiveStepSquares / steps);
  }

  /** Share of places in the middle 80 % of drawn tests; null without places. */
  Double placeCoverage() {
    return places == 0 ? null : (Double) ((double) placesCovered / places);
  }

  Double rankAgreement() {
    return agreement.tau();
  }

  Double naiveRankAgreement() {
    return naiveAgreement.tau();
  }
}
