package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultStepsTest {
  @TempDir Path folder;

  @Test
  void stepsAreKeptWithTheirReadingAndStayWhenItIsReplaced() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      Figures.add(archive, "a.csv", 1, 0);
      long old = archive.snapshot().results().id()[0];
      Figures.add(archive, "a.csv", 1, 0.5);
      long current = archive.snapshot().results().id()[0];
      assertThat(current).isNotEqualTo(old);
      assertThat(archive.originOf(old).orElseThrow().steps())
          .containsExactly(
              Step.to("number as written", 30000, Unit.MILLIMETRE)
                  .at(new Cell("Sheet", 2, 2, "30.0")),
              Step.of("from mm to m", 30000, Unit.MILLIMETRE, 30, Unit.METRE).labelled("exact"));
      assertThat(archive.originOf(current).orElseThrow().steps().get(1).after()).isEqualTo(30.5);
      assertThat(archive.originOf(current + 1).orElseThrow().steps()).isEmpty();
    }
  }
}
