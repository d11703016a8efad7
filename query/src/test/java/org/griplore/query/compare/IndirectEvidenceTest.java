package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.TestArchive.Told;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IndirectEvidenceTest {
  @TempDir Path folder;

  private static Told told(String key, Map<String, Double> metres) {
    Told told = TestArchive.told(key, "2020", SourceKind.OWN, null);
    metres.forEach((model, m) -> told.with(model, "wet-braking", m, Unit.METRE, null));
    return told;
  }

  private static ContrastQuestion.ContrastRow contrast(TestArchive archive) {
    return (ContrastQuestion.ContrastRow)
        archive
            .ask(
                "contrast",
                Map.of("model", List.of("A", "B"), "discipline", List.of("wet-braking")))
            .rows()
            .get(0);
  }

  /** A third tyre that met one of the two alone is no chain; one that met both apart is. */
  @Test
  void indirectEvidenceNeedsAChainOutsideTheSharedTests() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          told("both", Map.of("A", 30.0, "B", 31.0, "C", 33.0)),
          told("again", Map.of("A", 30.5, "B", 31.2, "C", 32.4)),
          told("one", Map.of("A", 29.0, "C", 33.0)));
      assertThat(contrast(archive).difference().directTests()).isEqualTo(2);
      assertThat(contrast(archive).difference().indirect()).isNull();
      assertThat(contrast(archive).difference().inconsistencyP()).isNull();
      archive.add(told("other", Map.of("B", 32.0, "C", 33.5)));
      assertThat(contrast(archive).difference().indirect()).isNotNull();
    }
  }
}
