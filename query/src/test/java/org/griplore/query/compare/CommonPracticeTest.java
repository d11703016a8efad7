package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.discipline.Difference;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts of common practice, not of a published source: checks of sense, with invented figures. */
class CommonPracticeTest {
  @TempDir Path folder;

  private static Difference contrast(TestArchive archive, String discipline) {
    return ((ContrastRow)
            archive
                .ask(
                    "contrast",
                    Map.of(
                        "model",
                        List.of("Velmora Aurelis 5", "Velmora Aurelis 4"),
                        "discipline",
                        List.of(discipline)))
                .rows()
                .get(0))
        .difference();
  }

  /**
   * A tyre can gain 7 % in wet braking and nothing in wet lap time: one says nothing of the other.
   */
  @Test
  void wetBrakingMayGainWhatTheLapTimeDoesNot() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.told("t1", "2021-05-01", SourceKind.OWN, null)
              .with("Velmora Aurelis 4", "wet-braking", 32.1, Unit.METRE, null)
              .with("Velmora Aurelis 5", "wet-braking", 30.0, Unit.METRE, null)
              .with("Velmora Aurelis 4", "wet-handling", 83.4, Unit.SECOND, null)
              .with("Velmora Aurelis 5", "wet-handling", 83.4, Unit.SECOND, null));
      assertThat(contrast(archive, "wet-braking").difference()).isCloseTo(7.0, within(1e-9));
      assertThat(contrast(archive, "wet-handling").difference()).isCloseTo(0.0, within(1e-12));
    }
  }

  /** Two decibels less are told as two decibels, never as per cent of the level. */
  @Test
  void twoDecibelsAreDecibels() {
    try (TestArchive archive = new TestArchive(folder)) {
      archive.add(
          TestArchive.told("t1", "2021-05-01", SourceKind.OWN, null)
              .with("Velmora Aurelis 4", "exterior-noise", 72.0, Unit.DECIBEL_A, null)
              .with("Velmora Aurelis 5", "exterior-noise", 70.0, Unit.DECIBEL_A, null));
      Difference difference = contrast(archive, "exterior-noise");
      assertThat(difference.difference()).isCloseTo(2.0, within(1e-12));
      assertThat(difference.unit()).isEqualTo("dB(A)");
      assertThat(difference.logDifference()).isNull();
    }
  }
}
