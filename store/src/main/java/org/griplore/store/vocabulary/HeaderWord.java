package org.griplore.store.vocabulary;

/**
 * One word of a phrase: {@code nass*} is any word that begins so, {@code *gewicht} any that ends
 * so, {@code *gewicht*} any that holds it. Letters are folded as by {@link HeaderKey}.
 */
record HeaderWord(String letters, boolean openStart, boolean openEnd) {
  /**
   * Reads the notation.
   *
   * @throws IllegalArgumentException when it has no letters
   */
  static HeaderWord of(String notation) {
    String letters = HeaderKey.fold(notation.replace("*", ""));
    if (letters.isEmpty() || !letters.chars().allMatch(Character::isLetterOrDigit)) {
      throw new IllegalArgumentException("not a word: " + notation);
    }
    return new HeaderWord(letters, notation.startsWith("*"), notation.endsWith("*"));
  }

  boolean fits(String word) {
    if (openStart) {
      return openEnd ? word.contains(letters) : word.endsWith(letters);
    }
    return openEnd ? word.startsWith(letters) : word.equals(letters);
  }

  /** Whether it is written without blanks between words, as Japanese is. */
  boolean runsOn() {
    return letters.charAt(0) >= '\u3000';
  }
}
