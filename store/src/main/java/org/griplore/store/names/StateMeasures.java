package org.griplore.store.names;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.TyreState.Wear;

/** Tread depth, mileage and age as a name tells them, and the wear that follows from them. */
final class StateMeasures {
  /**
   * A new car tyre has a tread of 7 to 9 mm (common practice, no source): less, said of a tyre in a
   * test, says that it was worn.
   */
  private static final double NEW_TREAD_MM = 7;

  /** What tyres are run in for before a test, at most (common practice, no source). */
  private static final double RUN_IN_KM = 1000;

  private static final double KM_PER_MILE = 1.609344;
  private static final double MM_PER_32ND = 25.4 / 32;

  private static final String NUMBER =
      "(?<![\\p{L}\\p{Nd}.,])(\\d{1,3}(?:[., '\u2019]\\d{3})+|\\d+(?:[.,]\\d+)?)";
  private static final Pattern DEPTH =
      Pattern.compile(
          "(?<![\\p{L}\\p{Nd}.,])((?:1?\\d|20)(?:[.,]\\d{1,2})?) ?(mm|\u339c|millim\\p{L}*)(?!\\p{L})",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern DEPTH_32NDS =
      Pattern.compile(
          "(?<![\\p{L}\\p{Nd}.,])(\\d{1,2}) ?/ ?32(?:nds?)?(?: ?(?:\"|\u2033|in\\b|inch\\b))?(?![\\p{L}\\p{Nd}])",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MILEAGE =
      Pattern.compile(
          NUMBER
              + " ?(k|t|tsd\\.?|tausend|thousand)? ?(km|kilom\\p{L}*|\u043a\u043c|miles?|mi)(?![\\p{L}/])(?! ?/ ?[hs\u0447])",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern AGE =
      Pattern.compile(
          "(?<![\\p{L}\\p{Nd}.,])(\\d{1,2}(?:[.,]5)?)[ -]?(" + years() + ")(?!\\p{L})",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private Double treadMm;
  private Double mileageKm;
  private Double ageYears;

  private static String years() {
    return EntryWords.standard().spelled(EntryWords.Kind.YEARS).stream()
        .sorted(Comparator.comparingInt(String::length).reversed())
        .map(Pattern::quote)
        .collect(Collectors.joining("|"));
  }

  /** Takes the measures of a text, each once; tells where each stands. */
  void read(String text, Consumer<Matcher> found) {
    treadMm = first(treadMm, DEPTH, text, found, m -> number(m.group(1)));
    treadMm = first(treadMm, DEPTH_32NDS, text, found, m -> number(m.group(1)) * MM_PER_32ND);
    mileageKm = first(mileageKm, MILEAGE, text, found, StateMeasures::km);
    ageYears = first(ageYears, AGE, text, found, m -> number(m.group(1)));
  }

  private static Double first(
      Double known,
      Pattern pattern,
      String text,
      Consumer<Matcher> found,
      ToDoubleFunction<Matcher> measure) {
    Double first = known;
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      if (first == null) {
        first = measure.applyAsDouble(matcher);
      }
      found.accept(matcher);
    }
    return first;
  }

  private static double km(Matcher match) {
    String text = match.group(1);
    boolean grouped = text.matches("\\d{1,3}([., '\u2019]\\d{3})+");
    double number = grouped ? Double.parseDouble(text.replaceAll("\\D", "")) : number(text);
    number *= match.group(2) == null ? 1 : 1000;
    return match.group(3).toLowerCase(Locale.ROOT).startsWith("mi") ? number * KM_PER_MILE : number;
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }

  boolean any() {
    return treadMm != null || mileageKm != null || ageYears != null;
  }

  /**
   * The state, where something tells one; else null. A word counts more than a measure; a tyre that
   * has an age was not as sold.
   */
  TyreState state(Wear said) {
    if (said == null && !any()) {
      return null;
    }
    boolean worn =
        (treadMm != null && treadMm < NEW_TREAD_MM)
            || (mileageKm != null && mileageKm > RUN_IN_KM)
            || ageYears != null;
    Wear wear = said != null ? said : worn ? Wear.WORN : Wear.NEW;
    return new TyreState(wear, treadMm, mileageKm, ageYears);
  }
}
