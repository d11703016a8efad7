package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.HashMap;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

/** Power of the two-sided t test by the noncentral t, against a general statistical package. */
class RunsNeededTest {
  private static final ReferenceCase POWER = ReferenceCase.carried("noncentral-t-power");

  private static Map<String, Double> parameters(String key) {
    Map<String, Double> values = new HashMap<>();
    for (String part : key.split(";")) {
      String[] pair = part.split("=");
      values.put(pair[0], Double.parseDouble(pair[1]));
    }
    return values;
  }

  private static RunsNeeded.Design design(String quantity) {
    return quantity.endsWith("two.sample")
        ? RunsNeeded.Design.TWO_SAMPLES
        : quantity.endsWith("paired") ? RunsNeeded.Design.PAIRED : RunsNeeded.Design.ONE_SAMPLE;
  }

  @Test
  void powerRunsAndDetectableDifferenceAgree() {
    Map<String, Integer> checked = new HashMap<>();
    for (ReferenceCase.Expected e : POWER.expected()) {
      if (e.key2().equals("strict=FALSE")) {
        continue; // counts one tail only
      }
      Map<String, Double> given = parameters(e.key1());
      RunsNeeded plan = new RunsNeeded(design(e.quantity()), 0.05);
      double sd = given.get("sd");
      if (e.quantity().startsWith("power.")) {
        double power = plan.power(given.get("n"), given.get("delta"), sd);
        assertRelative(e.toString(), power, e.value(), 1e-8);
      } else if (e.quantity().startsWith("n.integer.")) {
        assertThat(plan.runs(given.get("delta"), sd, given.get("power")))
            .as(e.toString())
            .isEqualTo((int) e.value());
      } else if (e.quantity().startsWith("n.")) {
        double reached = plan.power(e.value(), given.get("delta"), sd);
        assertRelative(e.toString(), reached, given.get("power"), 1e-8);
      } else {
        double found = plan.detectable(given.get("n").intValue(), sd, given.get("power"));
        assertRelative(e.toString(), found, e.value(), 1e-8);
      }
      checked.merge(e.quantity(), 1, Integer::sum);
    }
    assertThat(checked).containsEntry("n.integer.two.sample", 40).containsKey("power.paired");
    assertThat(checked.get("delta.detectable.two.sample")).isEqualTo(8);
  }

  @Test
  void withoutNoncentralityItIsStudentsT() {
    for (double df : new double[] {1, 2, 3.5, 10, 100, 1e4}) {
      for (double t : new double[] {-4, -1, 0, 0.3, 2, 8}) {
        NoncentralT distribution = new NoncentralT(df, 0);
        double below = new TDistribution(df).cumulativeProbability(t);
        assertRelative("df " + df + " t " + t, distribution.below(t), below, 1e-11);
        assertRelative("both tails", distribution.below(t) + distribution.above(t), 1, 1e-12);
      }
    }
  }

  /** One degree of freedom: P(T > 0) is Φ(δ) whatever the degrees of freedom. */
  @Test
  void theSignIsThatOfTheNormalPart() {
    NormalDistribution normal = new NormalDistribution(0, 1);
    for (double delta : new double[] {-6, -1, 0.5, 3}) {
      for (double df : new double[] {1, 7, 1e5}) {
        assertRelative(
            "delta " + delta,
            new NoncentralT(df, delta).above(0),
            normal.cumulativeProbability(delta),
            1e-12);
      }
    }
  }

  /** Far beyond where series in exp(-δ²/2) vanish, the normal approximation takes over. */
  @Test
  void largeNoncentralityStaysFinite() {
    double p = new NoncentralT(1e6, 400).above(400);
    assertThat(p).isBetween(0.49, 0.51);
    assertThat(new NoncentralT(5, 1000).above(2)).isEqualTo(1);
    assertThat(new NoncentralT(5, 1000).below(2)).isBetween(0.0, 1e-300);
  }

  @Test
  void impossiblePlansAreRefused() {
    RunsNeeded plan = new RunsNeeded(RunsNeeded.Design.TWO_SAMPLES, 0.05);
    assertThatIllegalArgumentException().isThrownBy(() -> plan.runs(0, 1, 0.8));
    assertThatIllegalArgumentException().isThrownBy(() -> plan.runs(1, 0, 0.8));
    assertThatIllegalArgumentException().isThrownBy(() -> plan.runs(1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> plan.runs(1, 1, 0.05));
    assertThatIllegalArgumentException().isThrownBy(() -> plan.runs(1e-9, 1, 0.8));
    assertThatIllegalArgumentException().isThrownBy(() -> plan.power(1, 1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RunsNeeded(RunsNeeded.Design.PAIRED, 0));
    assertThat(plan.runs(1000, 1, 0.8)).isEqualTo(2);
    assertThat(plan.runs(-0.5, 0.4, 0.8)).isEqualTo(12);
  }
}
