package org.griplore.query.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.ReducedSet.ReducedRun;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A class only where the conditions of the method are met, with its edition; else why not. */
class LabelClaimTest {
  private static final LabelFacts SUMMER =
      LabelFacts.of("205/55 R16 91V", SeasonClass.SUMMER, "2015-06-14");

  private static ReducedSet set(
      String model, boolean reference, Double mean, Double beside, Double surface, boolean valid) {
    LoggedRun.Role role = reference ? LoggedRun.Role.REFERENCE : LoggedRun.Role.CANDIDATE;
    LoggedRun run =
        new LoggedRun(
            "any",
            1,
            model,
            role,
            1,
            80.0,
            20.0,
            30.0,
            null,
            null,
            null,
            null,
            surface,
            null,
            null,
            new Cell("", 2, 4, model));
    return new ReducedSet(
        1,
        model,
        role,
        reference ? null : 1,
        mean,
        null,
        1,
        beside,
        "",
        null,
        null,
        valid,
        "",
        List.of(),
        List.of(new ReducedRun(run, mean, null, null)));
  }

  private static Reduction wet(String reference, ReducedSet candidate) {
    return new Reduction(
        "wet-braking",
        "mean deceleration",
        Unit.METRE_PER_SECOND_SQUARED,
        true,
        Direction.HIGH,
        null,
        80.0,
        20.0,
        new Reduction.Trace("not tested", null, null, null, null, null),
        6.7,
        "",
        List.of(),
        List.of(),
        List.of(set(reference, true, 6.7, null, 18.0, true), candidate));
  }

  private static LabelClaim wet(String reference, ReducedSet set, LabelFacts facts) {
    return WetGripLabel.of(set.model(), wet(reference, set), set, facts);
  }

  /** Constructed cycle, arithmetic by the 2011 text (coefficients from memory). */
  @ParameterizedTest
  @CsvSource({
    "7.6587, 6.7084, 18, 1.41, B, B",
    "7.0129, 6.7456, 19, 1.27, C, C",
    "6.3683, 6.7828, 21, 1.14, D, E"
  })
  void theConstructedCycleIsClassedInBothEras(
      double mean, double beside, double surface, double index, String now, String before) {
    LabelClaim claim = wet("SRTT 16 no. 4", set("T", false, mean, beside, surface, true), SUMMER);
    assertThat(claim.figure()).isCloseTo(index, within(1e-9));
    assertThat(claim.letter()).isEqualTo(now);
    assertThat(claim.letterBefore()).isEqualTo(before);
    assertThat(claim.sentence())
        .contains("2011 text", "from memory, check the official text", "no declaration");
  }

  @Test
  void eachConditionThatIsNotMetIsNamed() {
    ReducedSet good = set("T", false, 7.6, 6.7, 18.0, true);
    assertThat(wet("Control set K7", good, SUMMER).sentence())
        .startsWith("No label class for the wet grip index G: the reference is \"Control set K7\"");
    assertThat(wet("SRTT16C", good, SUMMER).hasClass()).isFalse();
    assertThat(wet("SRTT16", set("T", false, 7.6, 6.7, null, true), SUMMER).said())
        .contains("temperature of the wetted surface");
    assertThat(wet("SRTT16", set("T", false, 7.6, 6.7, 18.0, false), SUMMER).said())
        .contains("does not stand under the limits");
    assertThat(wet("SRTT16", good, LabelFacts.of("205/55 R16", SeasonClass.SUMMER, "2022")).said())
        .contains("coefficients of other editions are not shipped");
    assertThat(wet("SRTT16", good, LabelFacts.of("205/55 R16", SeasonClass.SUMMER, null)).said())
        .contains("the date is not known");
    assertThat(
            wet("SRTT16", good, LabelFacts.of("205/55 R16", SeasonClass.ALL_SEASON, "2015")).said())
        .contains("normal or as a snow tyre");
    assertThat(wet("SRTT16", good, LabelFacts.of(null, SeasonClass.SUMMER, "2015")).said())
        .contains("the size is not known");
    assertThat(wet("SRTT16", good, LabelFacts.of("205/65 R16C", SeasonClass.SUMMER, "2015")).said())
        .contains("van");
  }

  /** Old E is new D, old F and G are new E (1222/2009 and 2020/740 annex I part A, read). */
  @ParameterizedTest
  @CsvSource({"8.44, 8.4, C, C", "9.14, 9.1, D, E", "11.0, 11.0, E, F", "12.1, 12.1, E, G"})
  void aCoefficientIsClassedInBothErasAfterRounding(
      double value, double rounded, String now, String before) {
    LabelClaim claim = RollingResistanceLabel.of("T", value, "N/kN", SUMMER);
    assertThat(claim.figure()).isEqualTo(rounded);
    assertThat(claim.letter()).isEqualTo(now);
    assertThat(claim.letterBefore()).isEqualTo(before);
    assertThat(claim.said()).contains("aligned to a reference machine");
    assertThat(RollingResistanceLabel.of("T", 97, "% of best", SUMMER).hasClass()).isFalse();
  }

  private static LabelClaim noise(String coastBy, double level, LabelFacts facts) {
    ReducedSet set = set("T", false, level, 70.0, 20.0, true);
    Reduction reduction =
        new Reduction(
            "exterior-noise",
            "sound level",
            Unit.DECIBEL_A,
            false,
            Direction.LOW,
            coastBy,
            null,
            null,
            new Reduction.Trace("not tested", null, null, null, null, null),
            70.0,
            "",
            List.of(),
            List.of(),
            List.of(set));
    return NoiseLabel.of("T", reduction, set, facts);
  }

  /** 70.219 dB less 1, rounded down: 69 (constructed regression); 71 dB is the limit of 205 mm. */
  @Test
  void noiseIsClassedByItsOwnWidthOnlyWhereItCoastedBy() {
    LabelClaim claim = noise("C1", 70.219, SUMMER);
    assertThat(claim.figure()).isEqualTo(69);
    assertThat(claim.letter()).isEqualTo("B");
    assertThat(claim.letterBefore()).isEqualTo("2 waves");
    assertThat(claim.sentence()).contains("71 dB(A)", "from memory, check the official text");
    assertThat(noise(null, 70.2, SUMMER).sentence())
        .startsWith("No label class for the external rolling noise")
        .contains("the limit of its width is 71 dB(A)");
    LabelFacts wide = LabelFacts.of("265/35 R20 99Y XL", SeasonClass.SUMMER, "2015");
    assertThat(noise("C1", 71.5, wide).letter()).isEqualTo("A");
  }
}
