package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The alpha design of John and Williams 1995 (24 treatments, 18 blocks of four) as a network of
 * unknown variances: intrablock analysis, against R's lm and emmeans. The data are not carried with
 * the project; the test is skipped where they are absent.
 */
class IncompleteBlocksTest {

  @Test
  void intrablockAnalysis() {
    ReferenceCase c = ReferenceCase.outside("d1_john_alpha");
    List<Map<String, String>> rows = ReferenceCase.outsideTable("d1_john_alpha", "data.csv");
    List<String> blocks = rows.stream().map(IncompleteBlocksTest::block).distinct().toList();
    List<String> treatments = rows.stream().map(r -> r.get("gen")).distinct().sorted().toList();
    NetworkFit fit = fit(rows, blocks, treatments, false);
    c.check(fit.residualDf(), "intrablock.df", "", "", 0);
    c.check(fit.residualVariance().orElseThrow(), "intrablock.sigma2", "", "", 1e-8);
    checkDifferences(c, fit, "intrablock", treatments);
  }

  @Test
  void completeBlocks() {
    ReferenceCase c = ReferenceCase.outside("d1_john_alpha");
    List<Map<String, String>> rows = ReferenceCase.outsideTable("d1_john_alpha", "data.csv");
    List<String> replicates = rows.stream().map(r -> r.get("rep")).distinct().toList();
    List<String> treatments = rows.stream().map(r -> r.get("gen")).distinct().sorted().toList();
    NetworkFit fit = fit(rows, replicates, treatments, true);
    c.check(fit.residualDf(), "rcb.df", "", "", 0);
    c.check(fit.residualVariance().orElseThrow(), "rcb.sigma2", "", "", 1e-8);
    checkDifferences(c, fit, "rcb", treatments);
  }

  private static NetworkFit fit(
      List<Map<String, String>> rows, List<String> tests, List<String> models, boolean whole) {
    ArmList arms = new ArmList();
    for (Map<String, String> row : rows) {
      arms.add(
          tests.indexOf(whole ? row.get("rep") : block(row)),
          models.indexOf(row.get("gen")),
          Double.parseDouble(row.get("yield")),
          Double.NaN);
    }
    return NetworkFitter.fit(arms.build(), FitOptions.of(VarianceMethod.REML).conventional());
  }

  private static void checkDifferences(
      ReferenceCase c, NetworkFit fit, String analysis, List<String> names) {
    double sum = 0;
    double squares = 0;
    int pairs = 0;
    for (int a = 0; a < names.size(); a++) {
      for (int b = a + 1; b < names.size(); b++) {
        double se = ((EstimatedComparison) fit.compare(a, b)).se().orElseThrow();
        c.check(se, analysis + ".sed", names.get(a), names.get(b), 1e-8);
        sum += se;
        squares += se * se;
        pairs++;
      }
    }
    assertThat(pairs).isEqualTo(276);
    c.check(sum / pairs, analysis + ".mean.sed", "", "", 1e-8);
    c.check(squares / pairs, analysis + ".mean.var.diff", "", "", 1e-8);
    for (int b = 1; b < names.size(); b++) {
      EstimatedComparison compared = (EstimatedComparison) fit.compare(b, 0);
      c.check(compared.difference(), analysis + ".diff.vs.G01", names.get(b), "", 1e-8);
      c.check(compared.se().orElseThrow(), analysis + ".sed.vs.G01", names.get(b), "", 1e-8);
    }
  }

  private static String block(Map<String, String> row) {
    return row.get("rep") + row.get("block");
  }
}
