package org.griplore.query.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WordingTest {
  @Test
  void aDifferenceHasItsSignAndZeroNone() {
    assertThat(Wording.difference(1.25001, "%")).isEqualTo("+1.3 %");
    assertThat(Wording.difference(-0.26, "dB")).isEqualTo("\u22120.3 dB");
    assertThat(Wording.difference(-0.04, "")).isEqualTo("0.0");
    assertThat(Wording.signed(0.004, 2)).isEqualTo("0.00");
    assertThat(Wording.signed(-1200, 0)).isEqualTo("\u22121200");
  }

  @Test
  void anIntervalFollowsItsDifference() {
    assertThat(Wording.interval(-0.25, 1.5, 2)).isEqualTo(" (95 % interval \u22120.25 to +1.50)");
    assertThat(Wording.interval(null, null, 1)).isEmpty();
  }

  @Test
  void oneThingIsNotSeveral() {
    assertThat(Wording.counted(1, "test")).isEqualTo("1 test");
    assertThat(Wording.counted(0, "test")).isEqualTo("0 tests");
  }
}
