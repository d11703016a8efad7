package org.griplore.query.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.statistics.Tails;
import org.griplore.store.scenario.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against simulated archives, each from a truth of its own. */
class OutlookTruthTest {
  private static final List<String> DISCIPLINES =
      List.of(
          "wet-braking", "dry-braking", "rolling-resistance", "exterior-noise", "comfort", "price");
  private static final int ARCHIVES = 10;

  private static List<TestBlock> blocks(Evidence evidence, String discipline) {
    Filter filter = new Filter(Choices.of("backtest", "", Filter.OPTIONS, Map.of()), evidence);
    return TestBlocks.of(evidence, DisciplineArms.of(evidence, discipline, filter.withoutMakers()));
  }

  /**
   * Over the six disciplines of ten archives the intervals hold what they are meant to; in each the
   * predictions are nearer and better ordered than "same as last time". With temperature slopes
   * between season classes, which the model does not know, as well as without.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void intervalsHoldWhatTheyShouldAndTheNaiveRuleIsBeaten(boolean plain) {
    int[] covered = new int[3];
    int results = 0;
    for (String discipline : DISCIPLINES) {
      double error = 0;
      double naiveError = 0;
      double order = 0;
      double naiveOrder = 0;
      for (long seed = 1; seed <= ARCHIVES; seed++) {
        Scenario drawn = Scenario.drawn(100 + seed);
        Evidence evidence = SimulatedEvidence.of(plain ? drawn.plain() : drawn, seed);
        IntervalTally tally =
            PastPredictions.of(
                DescentForest.of(evidence.models()),
                blocks(evidence, discipline),
                new Exclusions());
        for (int level = 0; level < covered.length; level++) {
          covered[level] += tally.covered(level);
        }
        results += tally.results();
        error += tally.error();
        naiveError += tally.naiveError();
        order += tally.rankAgreement();
        naiveOrder += tally.naiveRankAgreement();
      }
      assertThat(error).as(discipline).isLessThan(naiveError);
      assertThat(order).as(discipline).isGreaterThan(naiveOrder);
    }
    assertThat(results).isGreaterThan(8000);
    assertThat((double) covered[0] / results).as("50 %%").isBetween(0.46, 0.54);
    assertThat((double) covered[1] / results).as("80 %%").isBetween(0.76, 0.84);
    assertThat((double) covered[2] / results).as("95 %%").isBetween(0.92, 0.98);
  }

  /** Steps and places that were predicted, over the same archives. */
  @Test
  void predictedStepsAndPlacesHoldWhatTheySay() {
    double steps = 0;
    double held = 0;
    double error = 0;
    double naive = 0;
    double places = 0;
    double placesHeld = 0;
    for (String discipline : DISCIPLINES) {
      for (long seed = 1; seed <= ARCHIVES; seed++) {
        Evidence evidence = SimulatedEvidence.of(Scenario.drawn(100 + seed).plain(), seed);
        IntervalTally tally =
            PastPredictions.of(
                DescentForest.of(evidence.models()),
                blocks(evidence, discipline),
                new Exclusions());
        steps += tally.steps();
        held += tally.steps() == 0 ? 0 : tally.steps() * tally.stepCoverage(1);
        error += tally.steps() == 0 ? 0 : tally.stepError() / tally.naiveStepError();
        naive += tally.steps() == 0 ? 0 : 1;
        places += tally.results();
        placesHeld += tally.results() * tally.placeCoverage();
      }
    }
    assertThat(steps).isGreaterThan(300);
    assertThat(held / steps).as("steps, of %s", steps).isBetween(0.76, 0.84);
    assertThat(error / naive).as("error beside the naive one").isLessThan(1);
    assertThat(placesHeld / places).as("places, of %s", places).isBetween(0.78, 0.92);
  }

  /** The true levels of all models, tested or not, against what is believed at the end. */
  @Test
  void believedLevelsHoldTheTruth() {
    int covered = 0;
    int all = 0;
    double factor = Tails.normal(0.8);
    for (String discipline : DISCIPLINES) {
      for (long seed = 1; seed <= ARCHIVES; seed++) {
        Scenario scenario = Scenario.drawn(200 + seed).plain();
        Evidence evidence = SimulatedEvidence.of(scenario, seed);
        List<TestBlock> blocks = blocks(evidence, discipline);
        DescentForest descent = DescentForest.of(evidence.models());
        LevelPosterior posterior =
            new LevelPosterior(descent, VarianceComponentsFit.of(descent, blocks, null));
        blocks.forEach(posterior::take);
        int[] models = IntStream.range(0, evidence.models().size()).toArray();
        double[] truth =
            Arrays.stream(models)
                .mapToDouble(
                    m ->
                        scenario.effect(
                            scenario.model(evidence.models().get(m).name()), discipline))
                .toArray();
        double mean = Arrays.stream(truth).average().orElseThrow();
        Levels levels = posterior.levels(models).lessMean();
        for (int m : models) {
          covered += Math.abs(truth[m] - mean - levels.mean()[m]) <= factor * levels.sd(m) ? 1 : 0;
          all++;
        }
      }
    }
    assertThat((double) covered / all).as("%d of %d", covered, all).isBetween(0.76, 0.84);
  }

  /** The components found are those of the truth, on average over archives. */
  @Test
  void spreadsAreThoseOfTheTruth() {
    double[] found = new double[3];
    for (long seed = 1; seed <= 2 * ARCHIVES; seed++) {
      Scenario scenario = Scenario.drawn(300 + seed).plain();
      Evidence evidence = SimulatedEvidence.of(scenario, seed);
      VarianceComponents components =
          VarianceComponentsFit.of(
              DescentForest.of(evidence.models()), blocks(evidence, "wet-braking"), null);
      found[0] += Math.log(components.tauSquared()) / 2 / (2 * ARCHIVES);
      found[1] += Math.log(components.line()) / 2 / (2 * ARCHIVES);
      found[2] += Math.log(components.step()) / 2 / (2 * ARCHIVES);
    }
    var truth = Scenario.stated().discipline("wet-braking");
    assertThat(Math.exp(found[0]) / truth.heterogeneitySd()).isBetween(0.9, 1.1);
    assertThat(Math.exp(found[1]) / truth.lineSd()).isBetween(0.8, 1.25);
    assertThat(Math.exp(found[2]) / truth.stepSd()).isBetween(0.8, 1.25);
  }
}
