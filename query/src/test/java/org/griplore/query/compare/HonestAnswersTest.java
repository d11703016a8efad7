package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.discipline.StrongestRemoval;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What answers say of thin evidence, by archives of a few invented results. */
class HonestAnswersTest {
  private static final String WET = "wet-braking";

  @TempDir Path folder;

  private TestArchive archive(double[]... tests) {
    TestArchive archive = new TestArchive(folder);
    for (int t = 0; t < tests.length; t++) {
      archive.add(
          TestArchive.told("t" + t, String.valueOf(2015 + t), SourceKind.OWN, null)
              .with("Old", WET, tests[t][0], Unit.METRE, null)
              .with("New", WET, tests[t][1], Unit.METRE, null));
    }
    return archive;
  }

  private static Answer<?> contrast(TestArchive archive) {
    return archive.ask(
        "contrast", Map.of("model", List.of("New", "Old"), "discipline", List.of(WET)));
  }

  @Test
  void oneTestHasNoIntervalAndSaysSo() {
    try (TestArchive archive = archive(new double[] {33, 30})) {
      Answer<?> answer = contrast(archive);
      ContrastRow row = (ContrastRow) answer.rows().get(0);
      assertThat(row.difference().low()).isNull();
      assertThat(row.difference().predictionLow()).isNull();
      assertThat(answer.summary())
          .contains("10.0 % better")
          .contains("no interval for another car, size and day")
          .contains("Without t0 nothing would connect the two.");
      Answer<?> standings = archive.ask("standings", Map.of("discipline", List.of(WET)));
      StandingRow first = (StandingRow) standings.rows().get(0);
      assertThat(first.score()).isNull();
      assertThat(first.rankLow()).isNull();
      assertThat(standings.caveats().get(0)).contains("how far tests differ cannot be told");
    }
  }

  @Test
  void aLossIsWordedAsALoss() {
    try (TestArchive archive =
        archive(new double[] {30, 33}, new double[] {30, 32.9}, new double[] {30, 33.1})) {
      assertThat(contrast(archive).summary())
          .contains("New against Old in wet-braking: 9.1 % worse (95 % interval for another car,");
    }
  }

  /** Two tests agree on a gain and a third, far larger, makes it doubtful. */
  @Test
  void theTestThatChangesTheSentenceIsNamed() {
    try (TestArchive archive =
        archive(
            new double[] {33, 32.9},
            new double[] {33, 32.5},
            new double[] {33, 32.7},
            new double[] {33, 32.6},
            new double[] {33, 26})) {
      Answer<?> answer = contrast(archive);
      ContrastRow row = (ContrastRow) answer.rows().get(0);
      assertThat(row.difference().low()).isNegative();
      StrongestRemoval test = row.hangsOn().get(0);
      assertThat(test.kind()).isEqualTo("test");
      assertThat(test.name()).isEqualTo("t4");
      assertThat(test.change()).isNegative();
      assertThat(answer.summary()).contains("t4");
      assertThat(answer.whole(StandingsQuestion.CONSISTENCY)).isEmpty();
      Answer<?> standings = archive.ask("standings", Map.of("discipline", List.of(WET)));
      assertThat(standings.whole(StandingsQuestion.CONSISTENCY).orElseThrow().df()).isEqualTo(4);
      assertThat(standings.whole(StandingsQuestion.MISFITS).orElseThrow())
          .extracting(misfit -> misfit.test())
          .containsOnly("t4");
      assertThat(standings.caveats()).anyMatch(line -> line.contains("fits no other result"));
      StandingRow first = (StandingRow) standings.rows().get(0);
      assertThat(List.of(first.rankLow(), first.rankHigh())).containsExactly(1, 2);
      double score = first.score();
      assertThat(score).isLessThan(0.975);
    }
  }
}
