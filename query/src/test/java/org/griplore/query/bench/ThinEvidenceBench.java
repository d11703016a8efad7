package org.griplore.query.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.query.discipline.ThinArchive.Spreads;
import org.griplore.query.discipline.ThinCoverage;
import org.griplore.query.discipline.ThinCoverage.Rule;

/**
 * How often 95 % intervals of steps, contrasts and standings hold the truth in archives of few
 * tests, under each rule that was tried: 300 archives a cell, seeds 1 to 300, eight other
 * disciplines in each. One line a rule and kind of archive: lowest and highest coverage over the
 * heterogeneities, then coverage where heterogeneity was estimated as zero, then the mean width.
 */
public final class ThinEvidenceBench {
  private static final double[] TAUS = {0, 0.5, 1, 2, 5};

  private ThinEvidenceBench() {}

  /** Prints the table; the argument is the number of archives a cell. */
  public static void main(String[] args) {
    int archives = args.length > 0 ? Integer.parseInt(args[0]) : 300;
    System.out.println("heterogeneity 0, 0.5, 1, 2 and 5 run-level standard deviations");
    for (Spreads spreads : Spreads.values()) {
      for (int tyres : new int[] {2, 6}) {
        for (int tests : new int[] {1, 2, 3, 4, 6, 10}) {
          for (Rule rule : Rule.values()) {
            line(spreads, tyres, tests, rule, archives);
          }
        }
      }
    }
  }

  private static void line(Spreads spreads, int tyres, int tests, Rule rule, int archives) {
    List<ThinCoverage> cells = new ArrayList<>();
    for (double tau : TAUS) {
      cells.add(ThinCoverage.of(rule, tests, tyres, spreads, tau, 8, archives));
    }
    ThinCoverage all = ThinCoverage.together(cells);
    if (all.given() == 0) {
      System.out.printf(
          Locale.ROOT, "%-9s %d tyres %2d tests %-21s no interval%n", spreads, tyres, tests, rule);
      return;
    }
    System.out.printf(
        Locale.ROOT,
        "%-9s %d tyres %2d tests %-21s %.3f to %.3f, zero %.3f of %d, width %.1f%n",
        spreads,
        tyres,
        tests,
        rule,
        cells.stream().mapToDouble(ThinCoverage::share).min().orElseThrow(),
        cells.stream().mapToDouble(ThinCoverage::share).max().orElseThrow(),
        all.shareAtZero(),
        all.zeroGiven(),
        all.width());
  }
}
