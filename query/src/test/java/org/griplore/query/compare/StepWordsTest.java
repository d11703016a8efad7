package org.griplore.query.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.griplore.query.discipline.Difference;
import org.junit.jupiter.api.Test;

class StepWordsTest {
  private static Difference step(double step, Double low, Double high) {
    return new Difference(
        "%", step, null, low, high, null, null, null, null, 2, null, null, null, null, null);
  }

  @Test
  void aVerdictSaysNoMoreThanTheIntervalAllows() {
    assertThat(StepWords.verdict(step(3, 1.0, 5.0), 0.93, List.of()))
        .isEqualTo("better, larger than 9 of 10 steps");
    assertThat(StepWords.verdict(step(1, -1.0, 3.0), 0.5, List.of()))
        .isEqualTo("cannot be told from zero, larger than 5 of 10 steps");
    assertThat(StepWords.verdict(step(-2, -3.0, -1.0), null, List.of())).isEqualTo("worse");
    assertThat(StepWords.verdict(step(9, null, null), null, List.of()))
        .isEqualTo("no interval for another car, size and day: too few tests");
    assertThat(StepWords.verdict(step(1, 0.0, 2.0), null, List.of()))
        .isEqualTo("cannot be told from zero");
  }
}
