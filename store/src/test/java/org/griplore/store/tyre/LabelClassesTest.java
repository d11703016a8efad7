package org.griplore.store.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelClassesTest {
  /** Regulation (EU) 2020/740, annex I part A: both ends of each class, C1, C2, C3. */
  @ParameterizedTest(name = "{0} of 2021: C1 {1}-{2}, C2 {3}-{4}, C3 {5}-{6} N/kN")
  @CsvSource({
    "A,0.1,6.5,0.1,5.5,0.1,4.0",
    "B,6.6,7.7,5.6,6.7,4.1,5.0",
    "C,7.8,9.0,6.8,8.0,5.1,6.0",
    "D,9.1,10.5,8.1,9.0,6.1,7.0",
    "E,10.6,30,9.1,30,7.1,30"
  })
  void rollingResistance2021(
      String letter, double a1, double b1, double a2, double b2, double a3, double b3) {
    rolling(letter, LabelEra.ERA_2021, a1, b1, a2, b2, a3, b3);
  }

  /** Regulation (EC) 1222/2009, annex I part A. */
  @ParameterizedTest(name = "{0} of 2012: C1 {1}-{2}, C2 {3}-{4}, C3 {5}-{6} N/kN")
  @CsvSource({
    "A,0.1,6.5,0.1,5.5,0.1,4.0",
    "B,6.6,7.7,5.6,6.7,4.1,5.0",
    "C,7.8,9.0,6.8,8.0,5.1,6.0",
    "D,,,,,6.1,7.0",
    "E,9.1,10.5,8.1,9.2,7.1,8.0",
    "F,10.6,12.0,9.3,10.5,8.1,30",
    "G,12.1,30,10.6,30,,"
  })
  void rollingResistance2012(
      String letter, Double a1, Double b1, Double a2, Double b2, Double a3, Double b3) {
    rolling(letter, LabelEra.ERA_2012, a1, b1, a2, b2, a3, b3);
  }

  private static void rolling(String letter, LabelEra era, Double... ends) {
    for (int i = 0; i < ends.length; i++) {
      TyreClass tyreClass = TyreClass.values()[i / 2];
      if (ends[i] != null) {
        assertThat(RollingResistanceClass.of(ends[i], tyreClass, era).letter())
            .as("%s %s %s", ends[i], tyreClass, era)
            .isEqualTo(letter);
      } else {
        assertThat(RollingResistanceClass.letters(tyreClass, era)).doesNotContain(letter);
        assertThatThrownBy(() -> new RollingResistanceClass(letter, tyreClass, era))
            .isInstanceOf(Refusal.class)
            .hasMessageContaining("has no class " + letter);
      }
    }
  }

  /** Rounding rule: ISO 80000-1, annex B, rule B, cited for tyres in (EU) 2017/2400, annex X. */
  @ParameterizedTest(name = "{0} N/kN is class {1}")
  @CsvSource({"6.54,A", "6.55,B", "6.5499,A", "7.749,B", "7.75,C", "10.549,D", "10.55,E"})
  void coefficientIsRoundedBeforeItIsClassed(double coefficient, String letter) {
    assertThat(RollingResistanceClass.of(coefficient, TyreClass.C1, LabelEra.ERA_2021).letter())
        .isEqualTo(letter);
  }

  /** Regulation (EU) 2020/740, annex I part B. */
  @ParameterizedTest(name = "{0} of 2021: C1 {1}-{2}, C2 {3}-{4}, C3 {5}-{6}")
  @CsvSource({
    "A,1.55,3,1.40,3,1.25,3",
    "B,1.40,1.54,1.25,1.39,1.10,1.24",
    "C,1.25,1.39,1.10,1.24,0.95,1.09",
    "D,1.10,1.24,0.95,1.09,0.80,0.94",
    "E,0.1,1.09,0.1,0.94,0.1,0.79"
  })
  void wetGrip2021(
      String letter, double a1, double b1, double a2, double b2, double a3, double b3) {
    wet(letter, LabelEra.ERA_2021, a1, b1, a2, b2, a3, b3);
  }

  /** Regulation (EC) 1222/2009 as amended by (EU) 1235/2011, annex I part B; G is empty. */
  @ParameterizedTest(name = "{0} of 2012: C1 {1}-{2}, C2 {3}-{4}, C3 {5}-{6}")
  @CsvSource({
    "A,1.55,3,1.40,3,1.25,3",
    "B,1.40,1.54,1.25,1.39,1.10,1.24",
    "C,1.25,1.39,1.10,1.24,0.95,1.09",
    "D,,,,,0.80,0.94",
    "E,1.10,1.24,0.95,1.09,0.65,0.79",
    "F,0.1,1.09,0.1,0.94,0.1,0.64",
    "G,,,,,,"
  })
  void wetGrip2012(
      String letter, Double a1, Double b1, Double a2, Double b2, Double a3, Double b3) {
    wet(letter, LabelEra.ERA_2012, a1, b1, a2, b2, a3, b3);
  }

  private static void wet(String letter, LabelEra era, Double... ends) {
    for (int i = 0; i < ends.length; i++) {
      TyreClass tyreClass = TyreClass.values()[i / 2];
      if (ends[i] != null) {
        assertThat(WetGripClass.ofLabelIndex(ends[i], tyreClass, era).letter())
            .as("%s %s %s", ends[i], tyreClass, era)
            .isEqualTo(letter);
      } else {
        assertThat(WetGripClass.letters(tyreClass, era)).doesNotContain(letter);
      }
    }
  }

  /**
   * G = G(T) - 0.03: Regulations (EU) 1235/2011 and 2020/740, annex I part B. The first three are
   * the constructed cycle T1, T2, T3; without the 0.03 the last two would stand a class higher.
   */
  @ParameterizedTest(name = "G(T) {0}: G {1}, class {2}")
  @CsvSource({
    "1.4351,1.41,B",
    "1.3028,1.27,C",
    "1.1680,1.14,D",
    "1.58,1.55,A",
    "1.57,1.54,B",
    "1.40,1.37,C",
    "1.574,1.54,B",
    "1.575,1.55,A"
  })
  void labelIndexIsTheMeasuredOneLessThreeHundredths(double measured, String index, String letter) {
    assertThat(WetGripClass.labelIndex(measured)).isEqualByComparingTo(index);
    assertThat(WetGripClass.ofMeasured(measured, TyreClass.C1, LabelEra.ERA_2021).letter())
        .isEqualTo(letter);
  }

  /** Old E (C1) is new D; old F and G are new E: the same coefficient in both eras. */
  @ParameterizedTest(name = "{0} N/kN: {1} of 2012, {2} of 2021")
  @CsvSource({"10.0,E,D", "11.0,F,E", "12.5,G,E", "8.0,C,C"})
  void oneCoefficientHasTwoLetters(double coefficient, String old, String now) {
    RollingResistanceClass before =
        RollingResistanceClass.of(coefficient, TyreClass.C1, LabelEra.ERA_2012);
    RollingResistanceClass after =
        RollingResistanceClass.of(coefficient, TyreClass.C1, LabelEra.ERA_2021);
    assertThat(before.letter()).isEqualTo(old);
    assertThat(after.letter()).isEqualTo(now);
    assertThatThrownBy(() -> after.stepsBetterThan(before))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("do not compare; compare the coefficients in N/kN");
  }

  /** The upper edge of a van's D or E moved from 9.2 to 9.0 N/kN. */
  @Test
  void vanEdgeMovedBetweenTheEras() {
    assertThat(RollingResistanceClass.of(9.1, TyreClass.C2, LabelEra.ERA_2012).upperBound())
        .hasValueSatisfying(bound -> assertThat(bound).isEqualByComparingTo("9.2"));
    assertThat(RollingResistanceClass.of(9.1, TyreClass.C2, LabelEra.ERA_2021).upperBound())
        .isEmpty();
  }

  @Test
  void lettersOfOneEraCompare() {
    WetGripClass a = new WetGripClass("A", TyreClass.C1, LabelEra.ERA_2012);
    WetGripClass e = new WetGripClass("E", TyreClass.C1, LabelEra.ERA_2012);
    assertThat(a.stepsBetterThan(e)).as("D is empty, so three steps").isEqualTo(3);
    assertThat(e.lowerBound()).hasValueSatisfying(b -> assertThat(b).isEqualByComparingTo("1.10"));
    WetGripClass van = new WetGripClass("A", TyreClass.C2, LabelEra.ERA_2012);
    WetGripClass now = new WetGripClass("A", TyreClass.C1, LabelEra.ERA_2021);
    assertThatThrownBy(() -> a.stepsBetterThan(van)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> a.stepsBetterThan(now)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> new WetGripClass("D", TyreClass.C1, LabelEra.ERA_2012))
        .hasMessageContaining("expected one of A, B, C, E, F");
  }

  /** A tyre approved in two classes is graded on the scale of the higher class. */
  @Test
  void twoApprovalsAreGradedOnTheHigherScale() {
    assertThat(TyreClass.grading(TyreClass.C1, TyreClass.C2)).isEqualTo(TyreClass.C2);
    assertThat(TyreClass.grading(TyreClass.C3, TyreClass.C2)).isEqualTo(TyreClass.C3);
  }

  @Test
  void valuesThatCannotBeAreRefused() {
    assertThatThrownBy(() -> RollingResistanceClass.of(-1, TyreClass.C1, LabelEra.ERA_2021))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> RollingResistanceClass.of(Double.NaN, TyreClass.C1, LabelEra.ERA_2021))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> WetGripClass.ofMeasured(0, TyreClass.C1, LabelEra.ERA_2021))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> NoiseClass.declared(Double.NaN)).isInstanceOf(Refusal.class);
  }

  /** The old label applied from 1 November 2012 to 30 April 2021, the new one from 1 May 2021. */
  @Test
  void eraFollowsTheDay() {
    assertThat(LabelEra.on(LocalDate.of(2012, 10, 31))).isEmpty();
    assertThat(LabelEra.on(LocalDate.of(2012, 11, 1))).contains(LabelEra.ERA_2012);
    assertThat(LabelEra.on(LocalDate.of(2021, 4, 30))).contains(LabelEra.ERA_2012);
    assertThat(LabelEra.on(LocalDate.of(2021, 5, 1))).contains(LabelEra.ERA_2021);
  }

  /** Regulation (EC) 661/2009, annex II part B, kg/t. */
  @Test
  void approvalLimitsOfRollingResistance() {
    assertThat(RollingResistanceLimit.STAGE_1.of(TyreClass.C1)).isEqualTo(12.0);
    assertThat(RollingResistanceLimit.STAGE_1.of(TyreClass.C2)).isEqualTo(10.5);
    assertThat(RollingResistanceLimit.STAGE_1.of(TyreClass.C3)).isEqualTo(8.0);
    assertThat(RollingResistanceLimit.STAGE_2.of(TyreClass.C1)).isEqualTo(10.5);
    assertThat(RollingResistanceLimit.STAGE_2.of(TyreClass.C2)).isEqualTo(9.0);
    assertThat(RollingResistanceLimit.STAGE_2.of(TyreClass.C3)).isEqualTo(6.5);
  }

  /** Regulation (EC) 661/2009, annex II part C. */
  @ParameterizedTest(name = "{0} mm: {1}, {2} dB(A)")
  @CsvSource({
    "155,C1A,70",
    "185,C1A,70",
    "195,C1B,71",
    "215,C1B,71",
    "225,C1C,71",
    "245,C1C,71",
    "255,C1D,72",
    "275,C1D,72",
    "285,C1E,74"
  })
  void noiseLimitGoesByWidth(int width, String subclass, int limit) {
    assertThat(NoiseLimit.carSubclass(width)).isEqualTo(subclass);
    assertThat(NoiseLimit.car(width, false)).isEqualTo(limit);
    // One dB more for snow and extra load: from memory, check the official text.
    assertThat(NoiseLimit.car(width, true)).isEqualTo(limit + 1);
  }

  /** Stage 1: UN Regulation No. 117, section 6, of 2006. */
  @ParameterizedTest(name = "{0} mm: {1} dB(A) in stage 1")
  @CsvSource({"145,72", "155,73", "165,73", "175,74", "185,74", "195,75", "215,75", "225,76"})
  void olderNoiseLimit(int width, int limit) {
    assertThat(NoiseLimit.carStage1(width)).isEqualTo(limit);
  }

  /** Regulation (EC) 661/2009, annex II part C: C2 72 and 73, C3 73 and 75 dB(A). */
  @Test
  void commercialNoiseLimit() {
    assertThat(NoiseLimit.commercial(TyreClass.C2, NoiseLimit.Use.NORMAL)).isEqualTo(72);
    assertThat(NoiseLimit.commercial(TyreClass.C2, NoiseLimit.Use.TRACTION)).isEqualTo(73);
    assertThat(NoiseLimit.commercial(TyreClass.C3, NoiseLimit.Use.NORMAL)).isEqualTo(73);
    assertThat(NoiseLimit.commercial(TyreClass.C3, NoiseLimit.Use.TRACTION)).isEqualTo(75);
    assertThatThrownBy(() -> NoiseLimit.commercial(TyreClass.C1, NoiseLimit.Use.NORMAL))
        .isInstanceOf(Refusal.class);
  }

  /** Rounded down after 1 dB is taken off (the 1 dB from memory); 70.219 and 69.499 are worked. */
  @ParameterizedTest(name = "measured {0}: declared {1}")
  @CsvSource({"70.219,69", "69.499,68", "70.0,69", "69.999,68", "71.1,70"})
  void declaredNoiseIsRoundedDown(double measured, int declared) {
    assertThat(NoiseClass.declared(measured)).isEqualTo(declared);
  }

  /** Edges from memory, check the official text. */
  @ParameterizedTest(name = "{0} dB under limit {1}: {2}, {3}")
  @CsvSource({"67,70,A,1 wave", "68,70,B,2 waves", "70,70,B,2 waves", "71,70,C,3 waves"})
  void noiseClassIsRelativeToTheLimit(int declared, int limit, String letter, String waves) {
    assertThat(NoiseClass.of(declared, limit, LabelEra.ERA_2021).symbol()).isEqualTo(letter);
    assertThat(NoiseClass.of(declared, limit, LabelEra.ERA_2012).symbol()).isEqualTo(waves);
  }

  /** A wide tyre of 72 dB and a narrow one of 69 dB carry one letter: rank by dB. */
  @Test
  void oneLetterCoversSeveralDecibels() {
    assertThat(NoiseClass.of(72, NoiseLimit.car(285, false), LabelEra.ERA_2021))
        .isEqualTo(NoiseClass.of(69, NoiseLimit.car(195, false), LabelEra.ERA_2021));
  }
}
