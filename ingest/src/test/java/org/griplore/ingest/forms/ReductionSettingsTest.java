package org.griplore.ingest.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.griplore.ingest.reduce.Anchor;
import org.griplore.ingest.reduce.ReductionOptions;
import org.griplore.ingest.reduce.limit.Limit;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReductionSettingsTest {
  @Test
  void nothingGivenIsTheDisciplinesDefault() {
    assertThat(ReductionSettings.of("wet-braking", Map.of("size", "205/55 R16", "level", " ")))
        .isEqualTo(ReductionOptions.ofDiscipline("wet-braking"));
  }

  @Test
  void eachSettingIsRead() {
    ReductionOptions options =
        ReductionSettings.of(
            "wet-braking",
            Map.of(
                "window", "80 to 20 km/h",
                "level", "First",
                "drift", "significant",
                "drift limit", "5 %",
                "open end", "refuse",
                "coast-by", "C1"));
    assertThat(options.window()).isEqualTo(new Window(80, 20));
    assertThat(options.anchor()).isEqualTo(Anchor.FIRST_REFERENCE);
    assertThat(options.drift()).isEqualTo(ReductionOptions.Drift.WHERE_SIGNIFICANT);
    assertThat(options.limits().of(Limit.What.REFERENCE_DRIFT).orElseThrow().bound())
        .isEqualTo(0.05);
    assertThat(options.limits().of(Limit.What.VARIATION_WITHIN_SET)).isPresent();
    assertThat(options.openEnd()).isEqualTo(ReductionOptions.OpenEnd.REFUSE);
    assertThat(options.coastBy()).isEqualTo(TyreClass.C1);
  }

  @Test
  void aDisciplinesOwnSettingGoesBeforeTheGeneralOne() {
    Map<String, String> given = Map.of("window", "100-0", "window snow-braking", "50-5");
    assertThat(ReductionSettings.of("snow-braking", given).window()).isEqualTo(new Window(50, 5));
    assertThat(ReductionSettings.of("dry-braking", given).window()).isEqualTo(new Window(100, 0));
  }

  @ParameterizedTest
  @CsvSource({
    "window, fast, two speeds",
    "window, 20-80, a falling speed",
    "level, high, first or average",
    "drift, never, always or significant",
    "drift limit, 5, a percentage",
    "open end, guess, nearest or refuse",
    "coast-by, C4, 'C1, C2 or C3'"
  })
  void whatIsNotUnderstoodIsRefused(String topic, String text, String expected) {
    assertThatThrownBy(() -> ReductionSettings.of("wet-braking", Map.of(topic, text)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(expected);
  }
}
