package org.griplore.store.tyre;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * The label class of the wet grip index: annex I part B of Regulation (EC) 1222/2009 as amended by
 * (EU) 1235/2011, and of Regulation (EU) 2020/740. The label index is G = G(T) - 0.03, rounded to
 * 0.01 before it is classed.
 *
 * @param letter the class
 * @param tyreClass the scale it stands on
 * @param era the label's edition
 */
public record WetGripClass(String letter, TyreClass tyreClass, LabelEra era) {
  private static final BigDecimal TOLERANCE = new BigDecimal("0.03");
  private static final Map<LabelEra, Map<TyreClass, LabelScale>> ROWS =
      Map.of(
          LabelEra.ERA_2021,
          rows(
              "A 1.55 B 1.40 C 1.25 D 1.10 E",
              "A 1.40 B 1.25 C 1.10 D 0.95 E",
              "A 1.25 B 1.10 C 0.95 D 0.80 E"),
          LabelEra.ERA_2012,
          rows(
              "A 1.55 B 1.40 C 1.25 E 1.10 F",
              "A 1.40 B 1.25 C 1.10 E 0.95 F",
              "A 1.25 B 1.10 C 0.95 D 0.80 E 0.65 F"));

  /**
   * Checks that the row has the letter.
   *
   * @throws Refusal when it leaves the letter empty
   */
  public WetGripClass {
    LabelLetters.check(ROWS.get(era).get(tyreClass), letter, tyreClass, era);
  }

  /**
   * The class of a measured index.
   *
   * @param measured G(T), the corrected ratio to the reference tyre, before 0.03 is taken off
   */
  public static WetGripClass ofMeasured(double measured, TyreClass tyreClass, LabelEra era) {
    return of(decimal(measured).subtract(TOLERANCE), tyreClass, era);
  }

  /**
   * The class of a label index.
   *
   * @param labelIndex G, 0.03 already taken off
   */
  public static WetGripClass ofLabelIndex(double labelIndex, TyreClass tyreClass, LabelEra era) {
    return of(decimal(labelIndex), tyreClass, era);
  }

  /** The label index G = G(T) - 0.03, rounded to 0.01. */
  public static BigDecimal labelIndex(double measured) {
    return ROWS.get(LabelEra.ERA_2021)
        .get(TyreClass.C1)
        .rounded(decimal(measured).subtract(TOLERANCE));
  }

  /** The lowest rounded label index of the class; empty for the worst class. */
  public Optional<BigDecimal> lowerBound() {
    return ROWS.get(era).get(tyreClass).last(letter);
  }

  /** The letters of a row from best to worst; those left empty are missing. */
  public static List<String> letters(TyreClass tyreClass, LabelEra era) {
    return ROWS.get(era).get(tyreClass).letters();
  }

  /**
   * Steps by which this class is better than another of the same era and tyre class.
   *
   * @throws Refusal across eras or tyre classes: one letter means different grip
   */
  public int stepsBetterThan(WetGripClass other) {
    LabelLetters.requireSame(
        letter, tyreClass, era, other.letter, other.tyreClass, other.era, "wet grip indices");
    LabelScale row = ROWS.get(era).get(tyreClass);
    return row.place(other.letter) - row.place(letter);
  }

  private static WetGripClass of(BigDecimal index, TyreClass tyreClass, LabelEra era) {
    return new WetGripClass(ROWS.get(era).get(tyreClass).letter(index), tyreClass, era);
  }

  private static BigDecimal decimal(double index) {
    if (!(index > 0) || Double.isInfinite(index)) {
      throw new Refusal(
          "A wet grip index is above 0; found " + index,
          new Problem("wet grip index", Double.toString(index), "above 0"));
    }
    return BigDecimal.valueOf(index);
  }

  private static Map<TyreClass, LabelScale> rows(String c1, String c2, String c3) {
    Map<TyreClass, LabelScale> rows = new EnumMap<>(TyreClass.class);
    rows.put(TyreClass.C1, LabelScale.of(c1, 2, false));
    rows.put(TyreClass.C2, LabelScale.of(c2, 2, false));
    rows.put(TyreClass.C3, LabelScale.of(c3, 2, false));
    return rows;
  }
}
