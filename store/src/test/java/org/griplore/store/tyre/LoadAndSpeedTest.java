package org.griplore.store.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.griplore.store.vocabulary.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadAndSpeedTest {
  /** Two public tables that agree from 71 to 110, after ISO 4000-1 and UN Regulation No. 30. */
  private static final String TABLE =
      """
      70 335 71 345 72 355 73 365 74 375 75 387 76 400 77 412 78 425 79 437
      80 450 81 462 82 475 83 487 84 500 85 515 86 530 87 545 88 560 89 580
      90 600 91 615 92 630 93 650 94 670 95 690 96 710 97 730 98 750 99 775
      100 800 101 825 102 850 103 875 104 900 105 925 106 950 107 975 108 1000 109 1030
      110 1060 111 1090 112 1120 113 1150 114 1180 115 1215
      """;

  private static Map<Integer, Integer> table() {
    String[] figures = TABLE.strip().split("\\s+");
    Map<Integer, Integer> table = new HashMap<>();
    for (int i = 0; i < figures.length; i += 2) {
      table.put(Integer.valueOf(figures[i]), Integer.valueOf(figures[i + 1]));
    }
    return table;
  }

  @Test
  void loadsAreThePublishedOnes() {
    assertThat(table()).hasSize(46);
    table().forEach((index, load) -> assertThat(LoadIndex.kilograms(index)).hasValue(load));
    assertThat(LoadIndex.kilograms(69)).isEmpty();
    assertThat(LoadIndex.kilograms(116)).isEmpty();
  }

  /** The table follows a power law: load about 45 * 10^(index/80) kg. */
  @Test
  void loadsFollowTheirLawWithinOneAndAHalfPerCent() {
    table()
        .forEach(
            (index, load) ->
                assertThat((double) load)
                    .as("load index %d", index)
                    .isCloseTo(45 * Math.pow(10, index / 80.0), within(0.015 * load)));
  }

  @Test
  void cleanTableHasNoProblems() {
    assertThat(LoadIndex.problemsIn(table())).isEmpty();
    assertThat(LoadIndex.problemsIn(Map.of(116, 1250, 121, 1450, 69, 325))).isEmpty();
  }

  /** Typing errors that stand in public tables: 103 as 857, 105 as 924, 91 as 450 kg. */
  @Test
  void typingErrorsOfImportedTablesAreFound() {
    Map<Integer, Integer> wrong = table();
    wrong.put(103, 857);
    wrong.put(105, 924);
    wrong.put(91, 450);
    wrong.put(121, 1540);
    assertThat(LoadIndex.problemsIn(wrong))
        .containsExactly(
            new Problem("load index 91", "450 kg", "615 kg"),
            new Problem("load index 103", "857 kg", "875 kg"),
            new Problem("load index 105", "924 kg", "925 kg"),
            new Problem("load index 121", "1540 kg", "about 1465 kg"));
  }

  /** Published tables of speed symbols (UN Regulation No. 30). */
  @ParameterizedTest(name = "{0}: {1} km/h")
  @CsvSource({
    "L,120", "M,130", "N,140", "P,150", "Q,160", "R,170", "S,180", "T,190", "U,200", "H,210",
    "V,240", "W,270", "Y,300"
  })
  void speedIsThePublishedOne(String letter, int kmh) {
    assertThat(SpeedSymbol.of(letter).orElseThrow().kmh()).isEqualTo(kmh);
  }

  /** From memory, check the official text. */
  @ParameterizedTest(name = "{0}: {1} km/h")
  @CsvSource({"B,50", "C,60", "D,65", "E,70", "F,80", "G,90", "J,100", "K,110"})
  void lowSpeedSymbol(String letter, int kmh) {
    assertThat(SpeedSymbol.of(letter).orElseThrow().kmh()).isEqualTo(kmh);
  }

  @Test
  void speedSymbolsStandInOrderOfSpeedWithHBetweenUAndV() {
    assertThat(SpeedSymbol.values()).isSortedAccordingTo((a, b) -> a.kmh() - b.kmh());
    assertThat(SpeedSymbol.H).isGreaterThan(SpeedSymbol.U).isLessThan(SpeedSymbol.V);
    assertThat(SpeedSymbol.of("X")).isEmpty();
    assertThat(SpeedSymbol.of("")).isEmpty();
  }

  /**
   * V full to 210 and 91 % at 240, W full to 240 and 85 % at 270, linear between (an engineering
   * text); Y from memory, check the official text.
   */
  @ParameterizedTest(name = "{0} at {1} km/h: {2}")
  @CsvSource({
    "V,210,1",
    "V,225,0.955",
    "V,240,0.91",
    "W,240,1",
    "W,255,0.925",
    "W,270,0.85",
    "Y,270,1",
    "Y,300,0.85",
    "H,210,1",
    "T,100,1"
  })
  void loadFallsAtHighSpeed(SpeedSymbol symbol, double kmh, double share) {
    assertThat(symbol.loadShareAt(kmh).orElseThrow()).isCloseTo(share, within(1e-12));
  }

  @Test
  void noLoadIsStatedAboveTheSymbolsSpeed() {
    assertThat(SpeedSymbol.V.loadShareAt(241)).isEmpty();
    assertThat(SpeedSymbol.T.loadShareAt(Double.NaN)).isEmpty();
  }

  /** Load versions of 245/40 R19 on a trade page: SL 94, XL 98, HL 101 (10 % over XL). */
  @Test
  void loadVersionsOfOneSize() {
    assertThat(TyreSize.parse("245/40 R19 94Y").service().orElseThrow().loadKg()).hasValue(670);
    assertThat(TyreSize.parse("245/40 R19 98Y XL").service().orElseThrow().loadKg()).hasValue(750);
    TyreSize high = TyreSize.parse("HL245/40 R19 101Y");
    assertThat(high.prefix()).isEqualTo(SizePrefix.HIGH_LOAD);
    assertThat(high.service().orElseThrow().loadKg()).hasValue(825);
  }
}
