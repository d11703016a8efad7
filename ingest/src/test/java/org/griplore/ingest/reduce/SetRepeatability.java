package org.griplore.ingest.reduce;

import java.util.List;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.ingest.reduce.sample.Moments;

/**
 * How well runs of one set repeat, pooled over sets: the one-way layout of ISO 5725-2 (from memory,
 * check the official text). s_r^2 = MS within; s_L^2 = (MS between - MS within) / n0, not below 0,
 * with n0 = (N - sum n^2 / N) / (p - 1); s_R^2 = s_r^2 + s_L^2.
 *
 * @param msBetween mean square between groups; null for a single group
 * @param msWithin mean square within groups
 * @param freedomBetween groups less one
 * @param freedomWithin figures less groups
 * @param effectiveCount n0; null for a single group
 */
public record SetRepeatability(
    Double msBetween,
    double msWithin,
    int freedomBetween,
    int freedomWithin,
    Double effectiveCount) {
  private static final double NORMAL_975 = 1.959963984540054;

  /**
   * Of groups of figures, each group a set. Groups may differ in size; groups of one tell nothing
   * about the spread within and something about the spread between.
   *
   * @throws org.griplore.store.vocabulary.Refusal when no group has two figures
   */
  public static SetRepeatability of(List<List<Double>> groups) {
    List<Moments> sets =
        groups.stream()
            .filter(group -> !group.isEmpty())
            .map(group -> Moments.of(group.stream().mapToDouble(d -> d).toArray()))
            .toList();
    int total = sets.stream().mapToInt(Moments::count).sum();
    int within = total - sets.size();
    if (within < 1) {
      throw RunPosition.refusal(
          "repeatability", groups.size() + " sets of one run", "a set of two runs or more");
    }
    double mean = sets.stream().mapToDouble(set -> set.count() * set.mean()).sum() / total;
    double ssWithin = sets.stream().mapToDouble(Moments::squares).sum();
    int between = sets.size() - 1;
    if (between == 0) {
      return new SetRepeatability(null, ssWithin / within, 0, within, null);
    }
    double ssBetween =
        sets.stream()
            .mapToDouble(set -> set.count() * (set.mean() - mean) * (set.mean() - mean))
            .sum();
    double squaredCounts = sets.stream().mapToDouble(set -> set.count() * set.count()).sum();
    return new SetRepeatability(
        ssBetween / between,
        ssWithin / within,
        between,
        within,
        (total - squaredCounts / total) / between);
  }

  /** s_r, in the figures' unit. */
  public double deviation() {
    return Math.sqrt(msWithin);
  }

  /** s_L^2 by moments; null for a single group. */
  public Double varianceBetween() {
    return msBetween == null ? null : (Double) Math.max(0, (msBetween - msWithin) / effectiveCount);
  }

  /** s_R; null for a single group. */
  public Double reproducibility() {
    return msBetween == null ? null : (Double) Math.sqrt(msWithin + varianceBetween());
  }

  /** F = MS between / MS within; null for a single group or when nothing varies within. */
  public Double ratioOfVariances() {
    return msBetween == null || msWithin == 0 ? null : (Double) (msBetween / msWithin);
  }

  /**
   * Two runs of one set differ by less than this 95 times of 100: 1.96 sqrt(2) s_r, 1.96 being the
   * 97.5 % point of the normal distribution.
   */
  public double limit() {
    return NORMAL_975 * Math.sqrt(2) * deviation();
  }
}
