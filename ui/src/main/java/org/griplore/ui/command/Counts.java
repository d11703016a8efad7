package org.griplore.ui.command;

/** Counts in words: {@code 1 test, 12 tyres}. What there is none of is left out. */
final class Counts {
  private final StringBuilder words = new StringBuilder();

  static String of(long number, String one) {
    return new Counts().add(number, one).orElse("no " + one + "s");
  }

  Counts add(long number, String one) {
    return add(number, one, one + "s");
  }

  Counts add(long number, String one, String many) {
    if (number > 0) {
      words
          .append(words.isEmpty() ? "" : ", ")
          .append(number)
          .append(' ')
          .append(number == 1 ? one : many);
    }
    return this;
  }

  String orElse(String none) {
    return words.isEmpty() ? none : words.toString();
  }
}
