package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.griplore.ingest.reduce.RollingResistance.Alignment;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;

/** Worked by hand from UN Regulation No. 117 annex 6 (from memory) and 2020/740 annex V. */
class RollingResistanceTest {
  @Test
  void temperatureThenDrum() {
    double at25 = RollingResistance.at25(9.00, 23.4, TyreClass.C1, 91);
    assertThat(at25).isCloseTo(8.885, within(5e-4));
    double factor = RollingResistance.drumFactor(1.707, 2, 0.632);
    assertThat(factor).isCloseTo(0.98001, within(5e-6));
    assertThat(at25 * factor).isCloseTo(8.707, within(5e-4));
    assertThat(RollingResistance.drumFactor(2, 2, 0.632)).isEqualTo(1);
  }

  /** Measured warm, corrected up; a truck tyre by its load index. */
  @Test
  void signAndClass() {
    assertThat(RollingResistance.at25(9, 30, TyreClass.C1, 91)).isCloseTo(9.36, within(1e-12));
    assertThat(RollingResistance.at25(9, 30, TyreClass.C2, 121)).isCloseTo(9.45, within(1e-12));
    assertThat(RollingResistance.at25(9, 30, TyreClass.C3, 122)).isCloseTo(9.27, within(1e-12));
    assertThat(RollingResistance.isWithinConditions(19.9)).isFalse();
  }

  @Test
  void machinesAreAligned() {
    Alignment reference = new Alignment(0.98, 0.1);
    Alignment candidate = new Alignment(1.03, -0.2);
    double measured = 8.4;
    double through = reference.apply(candidate.apply(measured));
    Alignment both = candidate.then(reference);
    assertThat(both.apply(measured)).isCloseTo(through, within(1e-12));
    assertThat(both.slope()).isCloseTo(0.98 * 1.03, within(1e-12));
    assertThat(both.offset()).isCloseTo(0.98 * -0.2 + 0.1, within(1e-12));
  }

  /** 1 + (0.11 / 0.043)^2 = 7.54, so eight measurements. */
  @Test
  void anUnrepeatableMachineMeasuresMoreOften() {
    assertThat(RollingResistance.measurements(0.11, TyreClass.C1)).isEqualTo(8);
    assertThat(RollingResistance.measurements(0.075, TyreClass.C2)).isEqualTo(1);
    assertThat(RollingResistance.measurements(0.07, TyreClass.C3)).isEqualTo(5);
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> RollingResistance.at25(-9, 25, TyreClass.C1, 91))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("coefficient -9.0");
    assertThatThrownBy(() -> RollingResistance.drumFactor(0, 2, 0.6))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("drum diameter 0.0");
  }
}
