package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.Optional;

/**
 * By how much differences are off zero on average, over all groups and in each, when differences
 * vary inside a group and groups vary among each other: d = μ + group + w + e, var e known.
 *
 * <p>The variance inside groups is by moments over all of them (DerSimonian and Laird 1986); that
 * between groups by {@link BetweenVariance}. The mean has the interval of Hartung and Knapp 2001,
 * Statistics in Medicine 20:3875, over groups, never narrower than without their factor. A group is
 * drawn towards the mean by as much as its own evidence is thin (Efron and Morris 1975), its error
 * with what the variance between few groups leaves open (Morris 1983, J American Statistical
 * Association 78:47).
 */
public final class OffsetByGroup {
  /**
   * One offset.
   *
   * @param value plus where differences are above zero
   * @param se standard error
   * @param df degrees of freedom of its t
   * @param count differences it rests on
   */
  public record Offset(double value, double se, double df, int count) {
    /** The t interval. */
    public Interval interval(double level) {
      return Interval.around(value, Tails.student(level, df) * se);
    }
  }

  private final Offset mean;
  private final Offset[] groups;

  private OffsetByGroup(Offset mean, Offset[] groups) {
    this.mean = mean;
    this.groups = groups;
  }

  /**
   * The offsets of some differences.
   *
   * @param difference one a step, such as what a maker says less what others measured
   * @param variance error variance of each, above 0
   * @param group a number from 0 for the group of each, without gaps
   * @return empty for fewer than two differences
   * @throws IllegalArgumentException when lengths differ, a difference is not finite or a variance
   *     not above 0
   */
  public static Optional<OffsetByGroup> of(double[] difference, double[] variance, int[] group) {
    Checks.sameLength("differences and variances", difference.length, variance.length);
    Checks.sameLength("differences and groups", difference.length, group.length);
    Checks.finite("difference", difference);
    Checks.positive("variance", variance);
    int n = difference.length;
    if (n < 2) {
      return Optional.empty();
    }
    int count = Arrays.stream(group).max().orElse(-1) + 1;
    double inside = inside(difference, variance, group, count);
    double[] ofGroup = new double[count];
    double[] itsVariance = new double[count];
    int[] members = new int[count];
    weigh(difference, variance, group, inside, ofGroup, itsVariance, members);
    if (count == 1) {
      Offset only = new Offset(ofGroup[0], hartungKnapp(difference, variance, inside), n - 1.0, n);
      return Optional.of(new OffsetByGroup(only, new Offset[] {only}));
    }
    BetweenVariance between = BetweenVariance.reml(ofGroup, itsVariance);
    double se = Math.max(between.meanSe(), hartungKnapp(ofGroup, itsVariance, between.variance()));
    Offset mean = new Offset(between.mean(), se, count - 1.0, n);
    Offset[] groups = new Offset[count];
    for (int g = 0; g < count; g++) {
      groups[g] = shrunk(ofGroup[g], itsVariance[g], between, mean, count, members[g]);
    }
    return Optional.of(new OffsetByGroup(mean, groups));
  }

  private static double inside(double[] d, double[] v, int[] group, int count) {
    double[] w = new double[count];
    double[] w2 = new double[count];
    double[] wd = new double[count];
    int[] n = new int[count];
    for (int i = 0; i < d.length; i++) {
      w[group[i]] += 1 / v[i];
      w2[group[i]] += 1 / v[i] / v[i];
      wd[group[i]] += d[i] / v[i];
      n[group[i]]++;
    }
    double q = 0;
    double scale = 0;
    int df = 0;
    for (int i = 0; i < d.length; i++) {
      double apart = d[i] - wd[group[i]] / w[group[i]];
      q += apart * apart / v[i];
    }
    for (int g = 0; g < count; g++) {
      scale += w[g] - w2[g] / w[g];
      df += n[g] - 1;
    }
    return df == 0 ? 0 : Math.max(0, (q - df) / scale);
  }

  private static void weigh(
      double[] d,
      double[] v,
      int[] group,
      double inside,
      double[] ofGroup,
      double[] variance,
      int[] members) {
    double[] w = new double[ofGroup.length];
    for (int i = 0; i < d.length; i++) {
      w[group[i]] += 1 / (v[i] + inside);
      ofGroup[group[i]] += d[i] / (v[i] + inside);
      members[group[i]]++;
    }
    for (int g = 0; g < w.length; g++) {
      ofGroup[g] /= w[g];
      variance[g] = 1 / w[g];
    }
  }

  /** √(Σ w(d - mean)² / (n - 1) / Σw), never below 1/√Σw. */
  private static double hartungKnapp(double[] d, double[] v, double heterogeneity) {
    double w = 0;
    double wd = 0;
    for (int i = 0; i < d.length; i++) {
      w += 1 / (v[i] + heterogeneity);
      wd += d[i] / (v[i] + heterogeneity);
    }
    double q = 0;
    for (int i = 0; i < d.length; i++) {
      double apart = d[i] - wd / w;
      q += apart * apart / (v[i] + heterogeneity);
    }
    return Math.sqrt(Math.max(1, q / (d.length - 1.0)) / w);
  }

  private static Offset shrunk(
      double own, double variance, BetweenVariance between, Offset mean, int groups, int count) {
    double keep = between.variance() / (between.variance() + variance);
    double drawn = 1 - keep;
    double apart = own - mean.value();
    double open = groups > 3 ? 2.0 / (groups - 3) * drawn * drawn * apart * apart : 0;
    double se = Math.sqrt(keep * variance + drawn * drawn * mean.se() * mean.se() + open);
    return new Offset(mean.value() + keep * apart, se, groups - 1.0, count);
  }

  /** Over all groups: what to expect of one that is not among them, on average. */
  public Offset mean() {
    return mean;
  }

  /** A group's own, drawn towards the mean. */
  public Offset group(int group) {
    return groups[group];
  }
}
