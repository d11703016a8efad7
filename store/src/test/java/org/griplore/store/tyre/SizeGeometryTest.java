package org.griplore.store.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeGeometryTest {
  /** Worked here from H = S1 Ra / 100, D = 25.4 code + 2 H; nothing printed stands behind them. */
  @ParameterizedTest(name = "{0}: H {1}, D {2}, {3} mm around, {4} a km")
  @CsvSource({
    "195/65 R15,126.75,634.5,1993,502",
    "205/55 R16,112.75,631.9,1985,504",
    "225/60 R16,135.00,676.4,2125,471",
    "225/45 R17,101.25,634.3,1993,502",
    "245/40 R19,98.00,678.6,2132,469",
    "235/85 R16,199.75,805.9,2532,395"
  })
  void exactDimensions(String text, double height, double diameter, long around, long perKm) {
    SizeGeometry geometry = SizeGeometry.exact(TyreSize.parse(text)).orElseThrow();
    assertThat(geometry.sectionHeightMm()).isCloseTo(height, within(1e-9));
    assertThat(geometry.outsideDiameterMm()).isCloseTo(diameter, within(1e-9));
    assertThat(Math.round(geometry.circumferenceMm())).isEqualTo(around);
    assertThat(Math.round(geometry.revolutionsPerKm())).isEqualTo(perKm);
  }

  /**
   * Tabulated d and rounded H as in UN Regulation No. 30, paragraph 6.1.2: from memory, check the
   * official text.
   */
  @ParameterizedTest(name = "{0}: d {1}, H {2}, D {3}")
  @CsvSource({
    "195/65 R15,381,127,635",
    "205/55 R16,406,113,632",
    "225/45 R17,432,101,634",
    "245/40 R19,483,98,679",
    "155/80 R13,330,124,578",
    "255/35 R22,559,89,737"
  })
  void tabulatedDimensions(String text, double rim, double height, double diameter) {
    SizeGeometry geometry = SizeGeometry.tabulated(TyreSize.parse(text)).orElseThrow();
    assertThat(geometry.rimDiameterMm()).isEqualTo(rim);
    assertThat(geometry.sectionHeightMm()).isEqualTo(height);
    assertThat(geometry.outsideDiameterMm()).isEqualTo(diameter);
  }

  /** 31 in = 787.4 mm, 10.5 in = 266.7 mm, sidewall (31 - 15) / 2 = 8 in = 203.2 mm. */
  @Test
  void flotationSizeStatesItsDiameter() {
    TyreSize size = TyreSize.parse("31x10.5 R15 LT");
    SizeGeometry geometry = SizeGeometry.exact(size).orElseThrow();
    assertThat(geometry.outsideDiameterMm()).isCloseTo(787.4, within(1e-9));
    assertThat(geometry.sectionHeightMm()).isCloseTo(203.2, within(1e-9));
    assertThat(size.widthMm()).isCloseTo(266.7, within(1e-9));
    assertThat(SizeGeometry.tabulated(size)).isEmpty();
  }

  @Test
  void nothingIsInventedWithoutAnAspectRatioOrTableEntry() {
    assertThat(SizeGeometry.exact(TyreSize.parse("185 R14C"))).isEmpty();
    assertThat(SizeGeometry.tabulated(TyreSize.parse("235/75 R17.5"))).isEmpty();
    assertThat(SizeGeometry.tabulated(TyreSize.parse("145/80 R10"))).isEmpty();
  }

  /**
   * S = S1 + K (A - A1), K = 0.4: UN Regulation No. 30, paragraph 6.1.1.1. On its theoretical rim
   * the width is nominal; a rim 1 inch wider makes the section 10.16 mm wider.
   */
  @ParameterizedTest(name = "{0} mm on {1} in: {2} mm")
  @CsvSource({"205,5.65,205", "205,6.5,214", "205,5.5,203", "225,7.5,238", "195,6,201"})
  void sectionWidthFollowsTheRim(int nominal, double rim, long width) {
    assertThat(SizeGeometry.sectionWidthMm(nominal, rim, 0.7)).isEqualTo(width);
  }
}
