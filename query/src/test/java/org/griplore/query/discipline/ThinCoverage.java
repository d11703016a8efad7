package org.griplore.query.discipline;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.griplore.query.discipline.ThinArchive.Spreads;
import org.griplore.query.network.Estimate;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.IntervalScale;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;

/**
 * How often intervals of steps, contrasts and standings hold the truth in {@link ThinArchive}s of
 * one kind.
 *
 * @param asked intervals asked for
 * @param given intervals given
 * @param held those that held the truth
 * @param zeroGiven those of archives whose heterogeneity was estimated as zero
 * @param zeroHeld those among them that held it
 * @param width mean width of those given, in usual run-level standard deviations
 */
public record ThinCoverage(
    int asked, int given, int held, int zeroGiven, int zeroHeld, double width) {

  /** How intervals are made. */
  public enum Rule {
    NORMAL(a -> fit(a, true), s -> s),
    STUDENT(a -> fit(a, true), s -> s),
    SCATTER(a -> fit(a, false), s -> s),
    SCATTER_AT_LEAST_RUNS(
        a -> fit(a, false), s -> new IntervalScale(Math.max(1, s.widening()), s.df())),
    SHARED(ThinArchive::fit, s -> s);

    private final Function<ThinArchive, NetworkFit> fit;
    private final Function<IntervalScale, IntervalScale> scale;

    Rule(Function<ThinArchive, NetworkFit> fit, Function<IntervalScale, IntervalScale> scale) {
      this.fit = fit;
      this.scale = scale;
    }

    private static NetworkFit fit(ThinArchive archive, boolean conventional) {
      FitOptions options = FitOptions.of(VarianceMethod.REML);
      return NetworkFitter.fit(archive.arms(), conventional ? options.conventional() : options);
    }
  }

  /** Over so many archives; seeds count up from a thousand times the heterogeneity, rounded. */
  public static ThinCoverage of(
      Rule rule, int tests, int tyres, Spreads spreads, double tau, int others, int archives) {
    Count count = new Count();
    long first = Math.round(1000 * tau);
    for (long seed = first; seed < first + archives; seed++) {
      ThinArchive archive = ThinArchive.of(tests, tyres, spreads, tau, others, seed);
      NetworkFit fit = rule.fit.apply(archive);
      boolean zero = fit.tauSquared().isPresent() && fit.tauSquared().getAsDouble() == 0;
      EstimatedComparison step = (EstimatedComparison) fit.compare(1, 0);
      EstimatedComparison ends = (EstimatedComparison) fit.compare(tyres - 1, 0);
      count.add(rule, fit, step.estimate(), ThinArchive.truth(1), zero);
      count.add(rule, fit, ends.estimate(), ThinArchive.truth(tyres - 1), zero);
      for (int m = 0; m < tyres; m++) {
        double truth = ThinArchive.truth(m) - ThinArchive.truth(tyres - 1) / 2;
        count.add(rule, fit, fit.effect(m).orElseThrow(), truth, zero);
      }
    }
    return new ThinCoverage(
        count.asked,
        count.given,
        count.held,
        count.zeroGiven,
        count.zeroHeld,
        count.width / Math.max(1, count.given));
  }

  private static final class Count {
    private int asked;
    private int given;
    private int held;
    private int zeroGiven;
    private int zeroHeld;
    private double width;

    void add(Rule rule, NetworkFit fit, Estimate estimate, double truth, boolean zero) {
      asked++;
      if (estimate.se().isEmpty()) {
        return;
      }
      IntervalScale scale = rule.scale.apply(estimate.scale());
      if (rule == Rule.STUDENT) {
        if (fit.residualDf() < 1) {
          return;
        }
        scale = new IntervalScale(scale.widening(), fit.residualDf());
      }
      double reach = scale.reach(0.95) * estimate.se().getAsDouble();
      boolean holds = Math.abs(estimate.value() - truth) <= reach;
      given++;
      width += 2 * reach / ThinArchive.truth(1);
      held += holds ? 1 : 0;
      zeroGiven += zero ? 1 : 0;
      zeroHeld += zero && holds ? 1 : 0;
    }
  }

  /** The share of given intervals that held the truth; NaN when none was given. */
  public double share() {
    return (double) held / given;
  }

  /** The same where heterogeneity was estimated as zero. */
  public double shareAtZero() {
    return (double) zeroHeld / zeroGiven;
  }

  /** Counts of several kinds of archive together. */
  public static ThinCoverage together(List<ThinCoverage> all) {
    int given = all.stream().mapToInt(ThinCoverage::given).sum();
    return new ThinCoverage(
        all.stream().mapToInt(ThinCoverage::asked).sum(),
        given,
        all.stream().mapToInt(ThinCoverage::held).sum(),
        all.stream().mapToInt(ThinCoverage::zeroGiven).sum(),
        all.stream().mapToInt(ThinCoverage::zeroHeld).sum(),
        all.stream().mapToDouble(c -> c.width * c.given).sum() / Math.max(1, given));
  }

  @Override
  public String toString() {
    return given == 0
        ? "none given"
        : String.format(
            Locale.ROOT,
            "%.3f (zero: %.3f of %d; width %.1f)",
            share(),
            shareAtZero(),
            zeroGiven,
            width);
  }
}
