package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;

/** Unbalanced one-way layout; expected figures by R 4.2.2 (constructed data). */
class SetRepeatabilityTest {
  private static final ReferenceCase CASE = new ReferenceCase("constructed-repeatability");

  @Test
  void pooledOverTyres() {
    Map<String, List<Double>> groups = new LinkedHashMap<>();
    for (String[] row : CASE.data()) {
      groups.computeIfAbsent(row[0], t -> new ArrayList<>()).add(Double.valueOf(row[1]));
    }
    SetRepeatability r = SetRepeatability.of(List.copyOf(groups.values()));
    assertThat(r.msBetween()).isCloseTo(CASE.expected("ms.between"), within(1e-10));
    assertThat(r.msWithin()).isCloseTo(CASE.expected("ms.within"), within(1e-12));
    assertThat(r.freedomBetween()).isEqualTo((int) CASE.expected("df.between"));
    assertThat(r.freedomWithin()).isEqualTo((int) CASE.expected("df.within"));
    assertThat(r.effectiveCount()).isCloseTo(CASE.expected("n0"), within(1e-12));
    assertThat(r.deviation()).isCloseTo(CASE.expected("s.r"), within(1e-12));
    assertThat(r.varianceBetween()).isCloseTo(CASE.expected("s.L2.moments"), within(1e-11));
    assertThat(r.reproducibility()).isCloseTo(CASE.expected("s.R"), within(1e-11));
    assertThat(r.ratioOfVariances()).isCloseTo(CASE.expected("F"), within(1e-8));
    assertThat(r.limit())
        .isCloseTo(CASE.expected("repeatability.limit.1.96sqrt2.sr"), within(1e-12));
  }

  @Test
  void nothingRepeatsInSetsOfOneRun() {
    assertThatThrownBy(() -> SetRepeatability.of(List.of(List.of(1.0), List.of(2.0))))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("2 sets of one run");
  }

  @Test
  void aSingleGroupHasNoBetween() {
    SetRepeatability r = SetRepeatability.of(List.of(List.of(1.0, 3.0)));
    assertThat(r.deviation()).isEqualTo(Math.sqrt(2));
    assertThat(r.reproducibility()).isNull();
    assertThat(r.ratioOfVariances()).isNull();
  }
}
