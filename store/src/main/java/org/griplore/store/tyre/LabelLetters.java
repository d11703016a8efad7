package org.griplore.store.tyre;

import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** What label letters may not be used for, told in one way. */
final class LabelLetters {
  private LabelLetters() {}

  static void check(LabelScale row, String letter, TyreClass tyreClass, LabelEra era) {
    if (row.place(letter) < 0) {
      String expected = "one of " + String.join(", ", row.letters());
      throw new Refusal(
          era.regulation()
              + " has no class "
              + letter
              + " for "
              + tyreClass
              + "; expected "
              + expected,
          new Problem("label class", letter, expected));
    }
  }

  static void requireSame(
      String letter,
      TyreClass tyreClass,
      LabelEra era,
      String otherLetter,
      TyreClass otherClass,
      LabelEra otherEra,
      String instead) {
    if (era != otherEra || tyreClass != otherClass) {
      String one = letter + " (" + tyreClass + ", " + era.regulation() + ")";
      String other = otherLetter + " (" + otherClass + ", " + otherEra.regulation() + ")";
      throw new Refusal(
          "Label classes " + one + " and " + other + " do not compare; compare the " + instead,
          new Problem("label class", other, "a class of " + tyreClass + ", " + era.regulation()));
    }
  }
}
