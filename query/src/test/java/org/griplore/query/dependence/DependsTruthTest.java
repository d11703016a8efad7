package org.griplore.query.dependence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.estimate.DisciplineArms;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Names;
import org.griplore.query.option.Choices;
import org.griplore.store.scenario.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the stated truth of simulated archives (all of it invented). */
class DependsTruthTest {
  private static final int ARCHIVES = 200;

  /**
   * All-season tyres lose 0.35 % of wet braking a degree, stated by the scenario, and nothing with
   * the rim; truths, archives and their fields are drawn anew each time.
   */
  @ParameterizedTest(name = "{0} against summer on {1}: {2} a step")
  @CsvSource({"all-season, TEMPERATURE, -0.035", "all-season, RIM, 0", "all-season, YEAR, 0"})
  void slopesCoverTheTruth(String first, Moderator moderator, double truth) {
    int covered = 0;
    double sum = 0;
    for (int seed = 1; seed <= ARCHIVES; seed++) {
      DependsRow row = row(SimulatedEvidence.of(Scenario.drawn(seed), seed), first, moderator);
      sum += row.logSlope() / ARCHIVES;
      covered +=
          Math.log1p(row.low() / 100) <= truth && truth <= Math.log1p(row.high() / 100) ? 1 : 0;
    }
    assertThat(sum).isCloseTo(truth, within(0.003));
    assertThat(covered).isBetween(170, 199);
  }

  private static DependsRow row(Evidence evidence, String first, Moderator moderator) {
    Filter filter = new Filter(Choices.of("depends", "", Filter.OPTIONS, Map.of()), evidence);
    DisciplineArms arms = DisciplineArms.of(evidence, "wet-braking", filter);
    List<Side> sides = Side.two(List.of(first, "summer"), new Names(evidence.models()), evidence);
    Exclusions excluded = new Exclusions();
    return new Dependence(
            evidence,
            arms.measure(),
            sides,
            TestContrast.of(evidence, arms, sides, excluded),
            excluded,
            new Citations(evidence))
        .on(moderator);
  }
}
