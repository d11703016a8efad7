package org.griplore.query.statistics;

/**
 * Variances within and between groups of unequal size by restricted maximum likelihood (Patterson
 * and Thompson 1971, Biometrika 58:545).
 *
 * @param within variance within groups
 * @param between variance between groups, 0 where the likelihood is highest there
 * @param mean the overall mean under these variances
 */
public record OneWayReml(double within, double between, double mean) {
  private static final int STEPS = 200;

  /**
   * From groups. The likelihood is profiled over the ratio of the variances, whose score has one
   * root or none.
   *
   * @throws IllegalArgumentException as {@link OneWay#of}, or when nothing varies within groups
   */
  public static OneWayReml of(double[][] values) {
    OneWay oneWay = OneWay.of(values);
    if (oneWay.within() == 0) {
      throw new IllegalArgumentException("nothing varies within groups");
    }
    Summary[] groups = new Summary[values.length];
    for (int g = 0; g < values.length; g++) {
      groups[g] = Summary.of(values[g]);
    }
    Profile profile = new Profile(groups, oneWay);
    double low = 0;
    double high = 0;
    if (profile.score(0) < 0) {
      high = 1;
      while (profile.score(high) < 0) {
        low = high;
        high *= 2;
      }
      for (int step = 0; step < STEPS && high - low > Math.ulp(high); step++) {
        double middle = (low + high) / 2;
        if (profile.score(middle) < 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
    }
    double ratio = (low + high) / 2;
    profile.score(ratio);
    double within = profile.squares / (oneWay.count() - 1);
    return new OneWayReml(within, ratio * within, profile.mean);
  }

  /** The restricted likelihood along the ratio between / within. */
  private static final class Profile {
    private final Summary[] groups;
    private final OneWay oneWay;
    private double mean;
    private double squares;

    Profile(Summary[] groups, OneWay oneWay) {
      this.groups = groups;
      this.oneWay = oneWay;
    }

    /** Slope of -2 log likelihood; leaves the mean and the weighted squares behind. */
    double score(double ratio) {
      double level = groups[0].mean();
      double sumW = 0;
      double sumW2 = 0;
      double sumWy = 0;
      for (Summary group : groups) {
        double w = group.count() / (1 + group.count() * ratio);
        sumW += w;
        sumW2 += w * w;
        sumWy += w * (group.mean() - level);
      }
      double shift = sumWy / sumW;
      squares = oneWay.within();
      double slope = 0;
      for (Summary group : groups) {
        double w = group.count() / (1 + group.count() * ratio);
        double deviation = group.mean() - level - shift;
        squares += w * deviation * deviation;
        slope -= w * w * deviation * deviation;
      }
      mean = level + shift;
      return (oneWay.count() - 1) * slope / squares + sumW - sumW2 / sumW;
    }
  }
}
