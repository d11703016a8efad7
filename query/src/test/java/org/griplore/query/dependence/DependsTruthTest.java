package org.griplore.query.dependence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.discipline.DisciplineArms;
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
   * the rim or the years; truths, archives and their fields are drawn anew each time. Other models
   * stand for a class in each test, which the contrasts alone do not know: their intervals are
   * wider, and over the years hold the truth less often than they say.
   */
  @ParameterizedTest(name = "all-season against summer on {0}: {1} a step")
  @CsvSource({"TEMPERATURE, -0.035, 180", "RIM, 0, 180", "YEAR, 0, 165"})
  void slopesCoverTheTruth(Moderator moderator, double truth, int fewest) {
    int covered = 0;
    int coveredBySame = 0;
    double sum = 0;
    double sumBySame = 0;
    double width = 0;
    double widthBySame = 0;
    for (int seed = 1; seed <= ARCHIVES; seed++) {
      DependsRow row = row(SimulatedEvidence.of(Scenario.drawn(seed), seed), moderator);
      sum += row.logSlope() / ARCHIVES;
      sumBySame += log(row.sameModels()) / ARCHIVES;
      covered += log(row.low()) <= truth && truth <= log(row.high()) ? 1 : 0;
      coveredBySame +=
          log(row.sameModelsLow()) <= truth && truth <= log(row.sameModelsHigh()) ? 1 : 0;
      width += row.high() - row.low();
      widthBySame += row.sameModelsHigh() - row.sameModelsLow();
    }
    assertThat(sum).isCloseTo(truth, within(0.003));
    assertThat(sumBySame).isCloseTo(truth, within(0.001));
    assertThat(covered).isBetween(fewest, 199);
    assertThat(coveredBySame).isBetween(184, 199);
    assertThat(widthBySame).isLessThan(0.7 * width);
  }

  private static double log(double perCent) {
    return Math.log1p(perCent / 100);
  }

  private static DependsRow row(Evidence evidence, Moderator moderator) {
    Filter filter = new Filter(Choices.of("depends", "", Filter.OPTIONS, Map.of()), evidence);
    DisciplineArms arms = DisciplineArms.of(evidence, "wet-braking", filter);
    List<Side> sides =
        Side.two(List.of("all-season", "summer"), new Names(evidence.models()), evidence);
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
