package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.query.answer.Missing;
import org.griplore.query.answer.Wording;
import org.griplore.query.network.DesignSplit;
import org.griplore.query.network.Heterogeneity;
import org.griplore.query.network.IntervalScale;
import org.griplore.query.network.NetworkFit;

/**
 * Whether the tests of a network tell the same. Null where it cannot be known: all of Q without
 * run-level variances, the residual where they are there.
 *
 * @param q generalised Q over the runs' variances
 * @param qDf its degrees of freedom
 * @param qP chance of a larger Q if tests differed by their runs alone
 * @param iSquared share of the scatter beyond runs, 0 to 1
 * @param withinQ scatter among tests that held the same models
 * @param withinP chance of more of it
 * @param betweenQ what is left: designs that disagree
 * @param betweenP chance of more of it
 * @param heterogeneity standard deviation that a test adds to each result, on the discipline's
 *     scale
 * @param residual standard deviation of a result, run error and heterogeneity together
 * @param df residual degrees of freedom: results less tests less models plus components
 * @param intervalDf degrees of freedom of the intervals, those lent by other disciplines included
 * @param widening factor of standard errors in the intervals
 */
public record Consistency(
    Double q,
    Integer qDf,
    Double qP,
    Double iSquared,
    Double withinQ,
    Double withinP,
    Double betweenQ,
    Double betweenP,
    Double heterogeneity,
    Double residual,
    int df,
    Double intervalDf,
    Double widening) {
  /** Below this chance tests or designs are said to differ. */
  private static final double UNLIKELY = 0.05;

  static Consistency of(NetworkFit fit) {
    Heterogeneity all = fit.heterogeneity().filter(h -> h.df() > 0).orElse(null);
    DesignSplit split = all == null ? null : fit.designSplit().orElse(null);
    Heterogeneity within = split == null || split.within().df() < 1 ? null : split.within();
    Heterogeneity between = split == null || split.between().df() < 1 ? null : split.between();
    IntervalScale scale = fit.intervals().filter(s -> !s.isNormal()).orElse(null);
    Double tau = Missing.orNull(fit.tauSquared());
    Double residual = Missing.orNull(fit.residualVariance());
    return new Consistency(
        all == null ? null : (Double) all.q(),
        all == null ? null : (Integer) all.df(),
        all == null ? null : (Double) all.p(),
        all == null ? null : (Double) all.iSquared(),
        within == null ? null : (Double) within.q(),
        within == null ? null : (Double) within.p(),
        between == null ? null : (Double) between.q(),
        between == null ? null : (Double) between.p(),
        tau == null ? null : (Double) Math.sqrt(tau),
        residual == null ? null : (Double) Math.sqrt(residual),
        fit.residualDf(),
        scale == null ? null : (Double) scale.df(),
        scale == null ? null : (Double) scale.widening());
  }

  /** One line for people. */
  public String words(ComparisonScale scale) {
    if (df < 1) {
      return "Nothing was measured twice over, so how far tests differ cannot be told.";
    }
    List<String> parts = new ArrayList<>();
    if (q != null) {
      parts.add(
          String.format(
              Locale.ROOT,
              "%s (Q %.1f on %d, P %s; I\u00b2 %.0f %%)",
              qP < UNLIKELY
                  ? "tests differ by more than their runs"
                  : "tests differ no more than their runs let expect",
              q,
              qDf,
              probability(qP),
              100 * iSquared));
      if (betweenP != null) {
        parts.add(
            (betweenP < UNLIKELY
                    ? "fields of different tyres disagree"
                    : "fields of different tyres agree")
                + " (P "
                + probability(betweenP)
                + ")");
      }
    }
    Double spread = heterogeneity == null ? residual : heterogeneity;
    if (spread != null) {
      parts.add(
          (heterogeneity == null
                  ? "a result scatters by "
                  : "another car and day moves a result by ")
              + Wording.difference(scale.shown(spread), scale.shownUnit()).replace("+", "")
              + " (standard deviation)");
    }
    String line = String.join("; ", parts);
    return line.isEmpty()
        ? "How far tests differ cannot be told."
        : Character.toUpperCase(line.charAt(0)) + line.substring(1) + ".";
  }

  private static String probability(double p) {
    return p < 0.001 ? "below 0.001" : String.format(Locale.ROOT, "%.3f", p);
  }
}
