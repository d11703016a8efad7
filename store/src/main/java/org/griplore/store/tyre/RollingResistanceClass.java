package org.griplore.store.tyre;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * The label class of the rolling resistance coefficient: annex I part A of Regulation (EC)
 * 1222/2009 and of Regulation (EU) 2020/740. The coefficient is rounded to 0.1 N/kN before it is
 * classed.
 *
 * @param letter the class
 * @param tyreClass the scale it stands on
 * @param era the label's edition
 */
public record RollingResistanceClass(String letter, TyreClass tyreClass, LabelEra era) {
  private static final Map<LabelEra, Map<TyreClass, LabelScale>> ROWS =
      Map.of(
          LabelEra.ERA_2021,
          rows(
              "A 6.5 B 7.7 C 9.0 D 10.5 E",
              "A 5.5 B 6.7 C 8.0 D 9.0 E",
              "A 4.0 B 5.0 C 6.0 D 7.0 E"),
          LabelEra.ERA_2012,
          rows(
              "A 6.5 B 7.7 C 9.0 E 10.5 F 12.0 G",
              "A 5.5 B 6.7 C 8.0 E 9.2 F 10.5 G",
              "A 4.0 B 5.0 C 6.0 D 7.0 E 8.0 F"));

  /**
   * Checks that the row has the letter.
   *
   * @throws Refusal when it leaves the letter empty
   */
  public RollingResistanceClass {
    LabelLetters.check(ROWS.get(era).get(tyreClass), letter, tyreClass, era);
  }

  /**
   * The class of a coefficient.
   *
   * @param coefficient N/kN (the same figure in kg/t), above 0
   */
  public static RollingResistanceClass of(double coefficient, TyreClass tyreClass, LabelEra era) {
    if (!(coefficient > 0) || Double.isInfinite(coefficient)) {
      throw new Refusal(
          "A rolling resistance coefficient is above 0 N/kN; found " + coefficient,
          new Problem("rolling resistance", Double.toString(coefficient), "above 0 N/kN"));
    }
    String letter = ROWS.get(era).get(tyreClass).letter(BigDecimal.valueOf(coefficient));
    return new RollingResistanceClass(letter, tyreClass, era);
  }

  /** The highest rounded coefficient of the class, N/kN; empty for the worst class. */
  public Optional<BigDecimal> upperBound() {
    return ROWS.get(era).get(tyreClass).last(letter);
  }

  /** The letters of a row from best to worst; those left empty are missing. */
  public static List<String> letters(TyreClass tyreClass, LabelEra era) {
    return ROWS.get(era).get(tyreClass).letters();
  }

  /**
   * Steps by which this class is better than another of the same era and tyre class.
   *
   * @throws Refusal across eras or tyre classes: one letter means different coefficients
   */
  public int stepsBetterThan(RollingResistanceClass other) {
    LabelLetters.requireSame(
        letter, tyreClass, era, other.letter, other.tyreClass, other.era, "coefficients in N/kN");
    LabelScale row = ROWS.get(era).get(tyreClass);
    return row.place(other.letter) - row.place(letter);
  }

  private static Map<TyreClass, LabelScale> rows(String c1, String c2, String c3) {
    Map<TyreClass, LabelScale> rows = new EnumMap<>(TyreClass.class);
    rows.put(TyreClass.C1, LabelScale.of(c1, 1, true));
    rows.put(TyreClass.C2, LabelScale.of(c2, 1, true));
    rows.put(TyreClass.C3, LabelScale.of(c3, 1, true));
    return rows;
  }
}
