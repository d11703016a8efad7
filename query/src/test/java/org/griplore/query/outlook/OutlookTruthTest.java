package org.griplore.query.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.griplore.query.SimulatedEvidence;
import org.griplore.query.estimate.DisciplineArms;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.store.scenario.DisciplineTruth;
import org.griplore.store.scenario.Scenario;
import org.junit.jupiter.api.Test;

class OutlookTruthTest {
  @Test
  void probe() {
    int[] covered = new int[3];
    int results = 0;
    for (DisciplineTruth d : Scenario.stated().disciplines()) {
      int[] own = new int[3];
      int n = 0, unseen = 0;
      double e = 0, ne = 0, t = 0, nt = 0;
      int seeds = 0;
      Exclusions ex = new Exclusions();
      long start = System.nanoTime();
      for (long seed = 1; seed <= 20; seed++) {
        Evidence evidence = SimulatedEvidence.of(Scenario.drawn(seed).plain(), seed);
        Filter filter = new Filter(Choices.of("x", "", Filter.OPTIONS, Map.of()), evidence);
        List<Round> rounds = Rounds.of(evidence, DisciplineArms.of(evidence, d.key(), filter));
        Tally tally = PastPredictions.of(Descent.of(evidence.models()), rounds, ex);
        for (int l = 0; l < 3; l++) own[l] += tally.covered(l);
        n += tally.results();
        unseen += tally.unseen();
        if (tally.results() > 0) {
          seeds++;
          e += tally.error();
          ne += tally.naiveError();
          t += tally.rankAgreement() == null ? 0 : tally.rankAgreement();
          nt += tally.naiveRankAgreement() == null ? 0 : tally.naiveRankAgreement();
        }
      }
      System.out.printf(
          "%-22s n %5d unseen %4d cover %.3f %.3f %.3f error %.4f naive %.4f tau %.3f naive %.3f  %.0f ms%n",
          d.key(),
          n,
          unseen,
          own[0] / (double) n,
          own[1] / (double) n,
          own[2] / (double) n,
          e / seeds,
          ne / seeds,
          t / seeds,
          nt / seeds,
          (System.nanoTime() - start) / 1e6 / 20);
      for (int l = 0; l < 3; l++) covered[l] += own[l];
      results += n;
    }
    System.out.printf(
        "all %d %.3f %.3f %.3f%n",
        results,
        covered[0] / (double) results,
        covered[1] / (double) results,
        covered[2] / (double) results);
    assertThat(results).isPositive();
  }
}
