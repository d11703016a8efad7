package org.griplore.ingest.recognise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each rule that turns a figure is a step with the figure before and after. */
class FigureStepsTest {
  @TempDir Path folder;

  private List<Step> steps(String header, String first, String second) {
    String table =
        "Tyre;" + header + "\nVelmora Aurelis 5;" + first + "\nQuillarn Tarvion 11;" + second;
    try (Archive archive = Archive.openOrCreate(folder)) {
      return new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
              .preview(
                  Original.of("table", table.getBytes(StandardCharsets.UTF_8)), ReadOptions.NONE)
              .reports()
              .get(0)
              .entries()
              .get(0)
              .results()
              .stream()
              .findFirst()
              .map(Result::steps)
              .orElseThrow();
    }
  }

  @Test
  void aConversionIsAStepBehindTheNumber() {
    List<Step> steps = steps("Wet braking (ft)", "95,5*", "97,0");
    assertThat(steps).hasSize(2);
    assertThat(steps.get(0))
        .isEqualTo(Step.to("footnote mark left out; decimal comma", 95.5, Unit.FOOT));
    // international foot: 0.3048 m, exact
    assertThat(steps.get(1))
        .isEqualTo(Step.of("from ft to m", 95.5, Unit.FOOT, 95.5 * 0.3048, Unit.METRE));
  }

  @Test
  void aScaleTurnedRoundTellsBothFigures() {
    List<Step> steps = steps("Wet braking (% of best)", "104", "100");
    assertThat(steps).hasSize(2);
    assertThat(steps.get(1).before()).isEqualTo(104);
    assertThat(steps.get(1).after()).isCloseTo(96.1538, within(1e-4));
    assertThat(steps.get(1).rule()).contains("100 x 100 / x");
  }

  @Test
  void pointsOfAnUnknownScaleSayWhatTheyWereTakenAs() {
    List<Step> steps = steps("Comfort", "180", "240");
    assertThat(steps.get(1).before()).isEqualTo(180);
    assertThat(steps.get(1).beforeUnit()).isEqualTo(Unit.NUMBER);
    assertThat(steps.get(1).after()).isEqualTo(75);
    assertThat(steps.get(1).rule()).contains("unknown scale");
  }

  @Test
  void aNumberThatIsTakenAsItStandsNeedsNoStep() {
    assertThat(steps("Wet braking (m)", "31,5", "32,5")).isEmpty();
    assertThat(steps("Wet braking", "31,5", "32,5")).isEmpty();
  }
}
