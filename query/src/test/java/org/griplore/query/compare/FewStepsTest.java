package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A percentile among few steps comes with the caution that it is hardly more than a guess. */
class FewStepsTest {
  @TempDir Path folder;

  @Test
  void fewStepsAreSaid() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.lineage("A", "A", "A 1", null),
          TestArchive.lineage("A", "A", "A 2", "A 1"),
          TestArchive.lineage("A", "A", "A 3", "A 2"),
          TestArchive.lineage("A", "A", "A 4", "A 3"),
          TestArchive.lineage("A", "A", "A 5", "A 4"));
      for (int test = 1; test <= 3; test++) {
        TestArchive.Told told = TestArchive.told("t" + test, "202" + test, SourceKind.OWN, null);
        for (int model = 1; model <= 5; model++) {
          double value = 40 - model + 0.3 * ((model * test) % 3);
          told.with("A " + model, "wet-braking", value, Unit.METRE, null);
        }
        archive.add(told);
      }
      Answer<?> answer = archive.ask("generations", Map.of("line", List.of("A")));
      assertThat(answer.rows()).hasSize(4);
      assertThat(((GenerationsQuestion.GenerationRow) answer.rows().get(0)).percentile())
          .isNotNull();
      assertThat(answer.caveats())
          .anyMatch(caveat -> caveat.startsWith("The archive has few steps in wet-braking (4)"));
    }
  }
}
