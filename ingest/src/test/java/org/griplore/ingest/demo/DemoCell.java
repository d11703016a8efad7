package org.griplore.ingest.demo;

import java.math.BigDecimal;
import java.time.LocalDate;

/** What stands in one cell of a file to be written, before the language decides how it looks. */
sealed interface DemoCell {
  /** As it looks in a text file of a language. */
  String text(Lingo lingo);

  /** Text, or nothing. */
  record Words(String text) implements DemoCell {
    @Override
    public String text(Lingo lingo) {
      return text;
    }
  }

  /** A figure with the decimals it is printed with, and what follows it in the cell (a unit). */
  record Figure(BigDecimal value, String suffix) implements DemoCell {
    @Override
    public String text(Lingo lingo) {
      return lingo.decimal(value) + suffix;
    }
  }

  /** A day. */
  record Day(LocalDate day) implements DemoCell {
    @Override
    public String text(Lingo lingo) {
      return lingo.date(day);
    }
  }

  static DemoCell words(String text) {
    return new Words(text);
  }

  static DemoCell figure(BigDecimal value) {
    return new Figure(value, "");
  }
}
