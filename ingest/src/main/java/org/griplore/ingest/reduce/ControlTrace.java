package org.griplore.ingest.reduce;

import java.util.List;
import org.griplore.ingest.reduce.sample.Moments;
import org.griplore.ingest.reduce.sample.StraightLine;
import org.griplore.ingest.reduce.sample.StudentTail;

/**
 * What the reference set's means did over the day: the test of method A (ASTM F1650, abstract and
 * scope read; formulas behind a paywall, this is a natural reading). The trend is a regression of
 * the set means on position, tested by its t with m - 2 degrees of freedom. A step is the split of
 * the order into an earlier and a later part with the smallest residual sum of squares, tested by
 * the two-sample t of its two means with m - 2 degrees of freedom, p multiplied by the m - 1 splits
 * that were tried (Bonferroni). Of the two the one with the smaller p is named, if it is at most 5
 * %.
 *
 * <p>Needs three measurements; with four or fewer a step and a trend can hardly be told apart. With
 * two measurements only their difference is tested, against the scatter of their runs. Set means
 * count alike whatever their number of runs.
 *
 * @param verdict what explains the trace
 * @param line the trend; null for fewer than two measurements
 * @param trendP two-sided p of the trend; null where it cannot be tested
 * @param stepAfter position of the last measurement before the best step; null for fewer than three
 * @param stepSize later mean less earlier mean; null likewise
 * @param stepResidual residual sum of squares of the step; null likewise
 * @param stepP p of the step, corrected for the search; null likewise
 */
public record ControlTrace(
    Verdict verdict,
    StraightLine line,
    Double trendP,
    Integer stepAfter,
    Double stepSize,
    Double stepResidual,
    Double stepP) {
  private static final double SIGNIFICANT = 0.05;

  /** What explains the trace. */
  public enum Verdict {
    /** Fewer than two measurements, or no scatter to test two against. */
    UNTESTED("not tested"),
    STEADY("no significant drift"),
    TREND("a trend explains the reference best"),
    STEP("a step explains the reference best; interpolation misplaces the candidates around it"),
    /** Two measurements that differ: the shape between them is unknown. */
    CHANGE("the two reference measurements differ; step or trend cannot be told");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** For a page. */
    public String words() {
      return words;
    }
  }

  /**
   * Of the usable measurements of the reference, in the order of the day.
   *
   * @param references sets at rising positions
   */
  public static ControlTrace of(List<SetStatistics> references) {
    if (references.size() < 2) {
      return new ControlTrace(Verdict.UNTESTED, null, null, null, null, null, null);
    }
    double[] x = references.stream().mapToDouble(SetStatistics::position).toArray();
    double[] y = references.stream().mapToDouble(SetStatistics::mean).toArray();
    StraightLine line = StraightLine.fit(x, y);
    if (references.size() == 2) {
      return ofTwo(references.get(0), references.get(1), line);
    }
    if (isConstant(y)) {
      return new ControlTrace(Verdict.STEADY, line, 1.0, null, null, null, null);
    }
    double trendP = line.slopeP();
    int best = 1;
    for (int split = 2; split < y.length; split++) {
      if (residual(y, split) < residual(y, best)) {
        best = split;
      }
    }
    double residual = residual(y, best);
    double size = mean(y, best, y.length) - mean(y, 0, best);
    double error = Math.sqrt(residual / (y.length - 2) * (1.0 / best + 1.0 / (y.length - best)));
    double stepP =
        Math.min(1, (y.length - 1) * StudentTail.twoSided(Math.abs(size) / error, y.length - 2));
    Verdict verdict =
        Math.min(trendP, stepP) > SIGNIFICANT
            ? Verdict.STEADY
            : stepP < trendP ? Verdict.STEP : Verdict.TREND;
    return new ControlTrace(
        verdict, line, trendP, references.get(best - 1).position(), size, residual, stepP);
  }

  private static ControlTrace ofTwo(SetStatistics first, SetStatistics second, StraightLine line) {
    int freedom = first.count() + second.count() - 2;
    if (first.deviation() == null && second.deviation() == null) {
      return new ControlTrace(Verdict.UNTESTED, line, null, null, null, null, null);
    }
    double squares =
        Moments.of(first.counted().stream().mapToDouble(d -> d).toArray()).squares()
            + Moments.of(second.counted().stream().mapToDouble(d -> d).toArray()).squares();
    double change = Math.abs(second.mean() - first.mean());
    double error = Math.sqrt(squares / freedom * (1.0 / first.count() + 1.0 / second.count()));
    double p = change == 0 ? 1 : StudentTail.twoSided(change / error, freedom);
    return new ControlTrace(
        p > SIGNIFICANT ? Verdict.STEADY : Verdict.CHANGE, line, p, null, null, null, null);
  }

  /** Whether a drift was found to be significant, or could not be tested. */
  public boolean isToBeCorrected() {
    return verdict != Verdict.STEADY;
  }

  private static boolean isConstant(double[] y) {
    Moments moments = Moments.of(y);
    double noise = 1e-12 * Math.abs(moments.mean());
    return moments.squares() <= y.length * noise * noise;
  }

  private static double residual(double[] y, int split) {
    double sum = 0;
    for (int i = 0; i < y.length; i++) {
      double mean = i < split ? mean(y, 0, split) : mean(y, split, y.length);
      sum += (y[i] - mean) * (y[i] - mean);
    }
    return sum;
  }

  private static double mean(double[] y, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += y[i];
    }
    return sum / (to - from);
  }
}
