package org.griplore.query.statistics;

/**
 * One-way analysis of variance: how the spread divides between and within groups.
 *
 * @param groups number of groups
 * @param count number of values
 * @param between sum of squares between groups
 * @param within sum of squares within groups
 */
public record OneWay(int groups, int count, double between, double within) {
  /**
   * The analysis of these groups.
   *
   * @param values a row a group
   * @throws IllegalArgumentException for fewer than two groups, an empty group, or no group with
   *     two values
   */
  public static OneWay of(double[][] values) {
    Checks.atLeast(values.length, 2, "groups");
    int count = 0;
    for (double[] group : values) {
      Checks.atLeast(group.length, 1, "values in a group");
      count += group.length;
    }
    if (count == values.length) {
      throw new IllegalArgumentException("no group has two values");
    }
    double level = values[0][0];
    Summary[] shifted = new Summary[values.length];
    Sums within = new Sums();
    Sums total = new Sums();
    for (int g = 0; g < values.length; g++) {
      double[] fromLevel = new double[values[g].length];
      for (int i = 0; i < fromLevel.length; i++) {
        fromLevel[i] = values[g][i] - level;
      }
      shifted[g] = Summary.of(fromLevel);
      within.add(shifted[g].sumOfSquares());
      total.add(shifted[g].mean() * fromLevel.length);
    }
    double mean = total.total() / count;
    Sums between = new Sums();
    for (Summary group : shifted) {
      double deviation = group.mean() - mean;
      between.add(group.count() * deviation * deviation);
    }
    return new OneWay(values.length, count, between.total(), within.total());
  }

  /** Groups less one. */
  public int betweenDf() {
    return groups - 1;
  }

  /** Values less groups. */
  public int withinDf() {
    return count - groups;
  }

  /** Mean square between groups. */
  public double betweenMeanSquare() {
    return between / betweenDf();
  }

  /** Mean square within groups. */
  public double withinMeanSquare() {
    return within / withinDf();
  }

  /** Standard deviation within groups. */
  public double residualSd() {
    return Math.sqrt(withinMeanSquare());
  }

  /**
   * The ratio of the mean squares.
   *
   * @throws IllegalArgumentException when nothing varies within groups
   */
  public double f() {
    if (within == 0) {
      throw new IllegalArgumentException("nothing varies within groups");
    }
    return betweenMeanSquare() / withinMeanSquare();
  }

  /** P(F as large by chance); refused as {@link #f}. */
  public double p() {
    return Tails.fisherAbove(f(), betweenDf(), withinDf());
  }

  /**
   * Share of the spread that is between groups.
   *
   * @throws IllegalArgumentException when nothing varies
   */
  public double explained() {
    if (between + within == 0) {
      throw new IllegalArgumentException("nothing varies");
    }
    return between / (between + within);
  }
}
