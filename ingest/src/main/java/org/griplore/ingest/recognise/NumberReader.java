package org.griplore.ingest.recognise;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** Reads numbers as people write them in tables. */
public final class NumberReader {
  private static final Set<String> MISSING =
      Set.of(
          "",
          "-",
          "--",
          "\u2013",
          "\u2014",
          "\u2212",
          ".",
          "/",
          "?",
          "x",
          "n/a",
          "na",
          "n.a.",
          "n. a.",
          "#n/a",
          "nan",
          "null",
          "none",
          "k.a.",
          "k. a.",
          "k.a",
          "ka",
          "keine angabe",
          "e.t.",
          "e. t.",
          "ej testad",
          "ej testat",
          "s.o.",
          "n.c.",
          "nc",
          "n.d.",
          "nd",
          "nt",
          "n.t.",
          "n/t",
          "not tested",
          "nicht getestet",
          "non test\u00e9",
          "non testee",
          "ei testattu",
          "uppgift saknas",
          "\u2026",
          "...",
          "(-)",
          "tbd");
  private static final Set<String> NOT_FINISHED =
      Set.of("dnf", "dns", "abbruch", "abgebrochen", "abandon", "ab", "brutet", "aborted", "void");
  private static final Pattern FOOTNOTE =
      Pattern.compile(
          "\\s*(?:\\[\\d{1,3}\\]|[*\u2020\u2021\u00b9\u00b2\u00b3\u2070-\u207e]+\\)?)\\s*$");
  private static final Pattern NUMBER =
      Pattern.compile(
          "^(?<currency>[\u20ac\u00a3$]|EUR|GBP|USD|SEK|CHF)?\\s*(?<sign>[-+\u2212])?\\s*"
              + "(?<digits>\\d(?:[\\d.,]|[ \u00a0\u202f'\u2019](?=\\d{3}))*|[.,]\\d+)\\s*(?<rest>.*)$");

  /**
   * A lap time as timekeepers write it: {@code 1:23.4}, {@code 1:23,40}, {@code 2:05 min}, {@code
   * 1.23,45}, {@code 1'23"4}, {@code 1 min 23.4 s}.
   */
  private static final Pattern CLOCK =
      Pattern.compile(
          "(?<minutes>\\d{1,3})(?::|['\u2019\u2032]|\\s*min\\.?\\s*|\\.(?=\\d\\d[,\"]\\d))(?<seconds>[0-5]?\\d)"
              + "(?:[.,\"\u2033](?<fraction>\\d{1,4}))?(?:\\s*(?:min\\.?|m:s|min:s|s|\"|\u2033|''))?");

  /** What may stand behind a figure: a bracket, or the scatter of its runs. */
  private static final Pattern ASIDE =
      Pattern.compile(
          "(?<main>.*?[\\p{L}\\d%*.\u00b2])\\s*(?:\\((?<aside>[^()]{1,40})\\)"
              + "|(?:\u00b1|\\+/-|\\+-)\\s*(?<spread>[\\d.,]+)\\s*(?<unit>\\p{L}*))");

  /** A price without its hundredths: {@code 79,-}. */
  private static final Pattern ROUND_PRICE =
      Pattern.compile("(.*\\d)[.,]\\s?[-\u2013\u2014]{1,2}\\s*(\\D*)");

  /** A word of a rating scale with its mark in brackets: {@code befr. (3,2)}. */
  private static final Pattern WORD_AND_MARK =
      Pattern.compile("\\p{L}[\\p{L} .+-]{1,24}\\((?<mark>\\d{1,2}(?:[.,]\\d{1,2})?)\\)");

  private static final Pattern BOUND =
      Pattern.compile("^(?:>|<|\u2265|\u2264|>=|<=|over|under|\u00fcber|unter)\\s*[\\d.,].*");

  private static final Pattern EXPONENT =
      Pattern.compile("[-+\u2212]?\\d+(?:[.,]\\d+)?[eE][-+\u2212]?\\d{1,2}");

  private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:[.,]\\d{3})+(?:[.,]\\d*)?");

  private static final Optional<UnitWords.Recognised> SECONDS =
      Optional.of(new UnitWords.Recognised(Unit.SECOND, "m:s", false));

  private final DecimalMark mark;

  /** Reads the numbers of a table with this decimal mark. */
  public NumberReader(DecimalMark mark) {
    this.mark = mark;
  }

  /** What a text turned out to be. */
  public sealed interface Reading {
    /**
     * A number.
     *
     * @param unit the unit written with it; empty when there is none
     * @param rules what was done to the text, in words; empty when nothing
     * @param doubtful whether a single separator before three digits was taken for a thousands mark
     * @param aside what stands in brackets behind it, with a leading \u00b1 where it is the scatter
     *     of the runs; empty when nothing does
     */
    record Number(
        double value,
        Optional<UnitWords.Recognised> unit,
        String rules,
        boolean doubtful,
        String aside)
        implements Reading {
      /** A number with nothing beside it. */
      public Number(
          double value, Optional<UnitWords.Recognised> unit, String rules, boolean doubtful) {
        this(value, unit, rules, doubtful, "");
      }

      private Number with(String more, String beside) {
        String all = rules.isEmpty() ? more : more.isEmpty() ? rules : more + "; " + rules;
        return new Number(value, unit, all, doubtful, beside);
      }
    }

    /** A mark that says that there is no value. */
    record Missing() implements Reading {}

    /** A mark that says that the attempt was broken off. */
    record NotFinished() implements Reading {}

    /** Neither: not understood. */
    record NotNumber(String expected) implements Reading {}
  }

  /** Reads one text. */
  public Reading read(String text) {
    String plain = narrow(text).strip().replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    String lower = plain.toLowerCase(Locale.ROOT);
    if (MISSING.contains(lower)) {
      return new Reading.Missing();
    }
    if (NOT_FINISHED.contains(lower)) {
      return new Reading.NotFinished();
    }
    if (BOUND.matcher(lower).matches()) {
      return new Reading.NotNumber("one figure, not a bound");
    }
    Reading read = figure(plain);
    return read instanceof Reading.NotNumber ? besides(plain, read) : read;
  }

  /** Digits and marks of double width are the same digits. */
  private static String narrow(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '\uff00' && text.charAt(i) <= '\uffef') {
        return java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFKC);
      }
    }
    return text;
  }

  /** What is a figure once something beside it is set apart; else as it was read. */
  private Reading besides(String plain, Reading otherwise) {
    Matcher price = ROUND_PRICE.matcher(plain);
    if (price.matches()
        && figure((price.group(1) + " " + price.group(2)).strip())
            instanceof Reading.Number number) {
      return number.with("price mark left out", "");
    }
    Matcher mark = WORD_AND_MARK.matcher(plain);
    if (mark.matches() && figure(mark.group("mark")) instanceof Reading.Number number) {
      return number.with("the mark in brackets, without its word", "");
    }
    Matcher aside = ASIDE.matcher(plain);
    if (aside.matches()) {
      String main = aside.group("main");
      if (aside.group("spread") != null) {
        main = (main + " " + aside.group("unit")).strip();
      }
      if (figure(main) instanceof Reading.Number number) {
        String beside =
            aside.group("aside") != null ? aside.group("aside") : "\u00b1" + aside.group("spread");
        return number.with("", beside.strip());
      }
    }
    return otherwise;
  }

  private Reading figure(String plain) {
    StringBuilder rules = new StringBuilder();
    String marked = plain;
    Matcher footnote = FOOTNOTE.matcher(marked);
    if (footnote.find() && footnote.start() > 0 && !endsInUnit(marked)) {
      marked = marked.substring(0, footnote.start()).strip();
      add(rules, "footnote mark left out");
    }
    if (EXPONENT.matcher(marked).matches()) {
      double value = Double.parseDouble(marked.replace(',', '.').replace('\u2212', '-'));
      return new Reading.Number(value, Optional.empty(), "", false);
    }
    Matcher clock = CLOCK.matcher(marked);
    if (clock.matches()) {
      add(rules, "minutes and seconds to seconds");
      return new Reading.Number(seconds(clock), SECONDS, rules.toString(), false);
    }
    Matcher number = NUMBER.matcher(marked);
    if (!number.matches()) {
      return new Reading.NotNumber("a number");
    }
    String rest = number.group("rest").strip();
    if (rest.isEmpty() && number.group("currency") != null) {
      rest = number.group("currency");
    }
    Optional<UnitWords.Recognised> unit =
        rest.isEmpty() ? Optional.empty() : UnitWords.ofText(rest);
    if (!rest.isEmpty() && unit.isEmpty()) {
      return new Reading.NotNumber("a number, or a number with its unit");
    }
    return value(number, unit, rules);
  }

  /** A time has one mark between seconds and their fraction, so that no mark is in doubt. */
  private static double seconds(Matcher clock) {
    String fraction = clock.group("fraction") == null ? "" : "." + clock.group("fraction");
    long whole = 60 * Long.parseLong(clock.group("minutes"));
    return new BigDecimal(clock.group("seconds") + fraction)
        .add(BigDecimal.valueOf(whole))
        .doubleValue();
  }

  /** {@code m/s2} may be written with a raised two, which is no footnote. */
  private static boolean endsInUnit(String text) {
    return text.endsWith("m/s\u00b2") || text.matches(".*m/s\\s?\u00b2$");
  }

  private Reading value(Matcher number, Optional<UnitWords.Recognised> unit, StringBuilder rules) {
    String digits = number.group("digits").replaceAll("[ \u00a0\u202f'\u2019]", "");
    if (digits.length() != number.group("digits").length()) {
      add(rules, "thousands set apart");
    }
    digits = digits.replaceAll("[.,]$", "");
    if (digits.charAt(0) == '.' || digits.charAt(0) == ',') {
      add(rules, "no digit before the decimal mark");
      digits = "0" + digits;
    }
    boolean both = digits.indexOf('.') >= 0 && digits.indexOf(',') >= 0;
    if ((both || repeated(digits)) && !GROUPED.matcher(digits).matches()) {
      return new Reading.NotNumber("digits in groups of three before one decimal mark");
    }
    char told = DecimalMark.told(digits);
    boolean doubtful = false;
    char decimal = mark.mark();
    if (told != ' ') {
      decimal = told;
    } else if (mark == DecimalMark.OPEN || mark == DecimalMark.MIXED) {
      doubtful = digits.indexOf('.') >= 0 || digits.indexOf(',') >= 0;
      decimal = digits.indexOf(',') >= 0 ? '.' : ',';
    }
    char thousands = decimal == '.' ? ',' : '.';
    if (digits.indexOf(thousands) >= 0) {
      add(rules, "thousands mark left out");
    }
    if (decimal == ',' && digits.indexOf(',') >= 0) {
      add(rules, "decimal comma");
    }
    String plain = digits.replace(String.valueOf(thousands), "").replace(decimal, '.');
    if (plain.indexOf('.') != plain.lastIndexOf('.')) {
      return new Reading.NotNumber("one decimal mark");
    }
    double value = Double.parseDouble(plain);
    String sign = number.group("sign");
    if (sign != null && !sign.equals("+")) {
      value = -value;
    }
    return new Reading.Number(value, unit, rules.toString(), doubtful);
  }

  private static boolean repeated(String digits) {
    return digits.indexOf('.') != digits.lastIndexOf('.')
        || digits.indexOf(',') != digits.lastIndexOf(',');
  }

  private static void add(StringBuilder rules, String rule) {
    rules.append(rules.isEmpty() ? "" : "; ").append(rule);
  }
}
