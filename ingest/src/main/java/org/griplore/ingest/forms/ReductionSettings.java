package org.griplore.ingest.forms;

import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.reduce.Anchor;
import org.griplore.ingest.reduce.ReductionOptions;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * How a log is to be reduced, from the details given beside it. Each topic may carry the
 * discipline's key behind it, and then counts for that discipline only:
 *
 * <ul>
 *   <li>{@code window: 80-20}, the nominal speeds of braking runs in km/h
 *   <li>{@code level: first} or {@code level: average}, the reference's level that results stand on
 *   <li>{@code drift: always} or {@code drift: significant}, when a drift is corrected
 *   <li>{@code drift limit: 5 %}, the user's own limit between two reference measurements
 *   <li>{@code open end: nearest} or {@code open end: refuse}
 *   <li>{@code coast-by: C1}, levels at the reference speed and 20 degrees Celsius of the road
 * </ul>
 */
public final class ReductionSettings {
  private static final Pattern TOPIC =
      Pattern.compile("(window|level|drift|drift limit|open end|coast-by)( [a-z][a-z-]*)?");
  private static final Pattern WINDOW =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:-|\u2013|to)\\s*(\\d+(?:\\.\\d+)?)\\s*(?:km/h)?");
  private static final Pattern PER_CENT = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*%");

  private final String discipline;
  private final Map<String, String> given;
  private ReductionOptions options;

  private ReductionSettings(String discipline, Map<String, String> given) {
    this.discipline = discipline;
    this.given = given;
    this.options = ReductionOptions.ofDiscipline(discipline);
  }

  /** Whether these words before a colon are a setting, with a discipline behind it or without. */
  public static boolean isTopic(String words) {
    return TOPIC.matcher(words).matches();
  }

  /**
   * The options for a discipline.
   *
   * @throws Refusal for a setting that is not understood
   */
  static ReductionOptions of(String discipline, Map<String, String> given) {
    return new ReductionSettings(discipline, given).read();
  }

  private ReductionOptions read() {
    set("window", text -> options.between(window(text)));
    set("level", this::level);
    set("drift", this::drift);
    set("drift limit", this::driftLimit);
    set("open end", this::openEnd);
    set("coast-by", this::coastBy);
    return options;
  }

  private void set(String topic, Function<String, ReductionOptions> reading) {
    String text = given.getOrDefault(topic + " " + discipline, given.get(topic));
    if (text != null && !text.isBlank()) {
      options = reading.apply(text.strip().toLowerCase(Locale.ROOT));
    }
  }

  private static Window window(String text) {
    Matcher speeds = WINDOW.matcher(text);
    if (!speeds.matches()) {
      throw refusal("window", text, "two speeds in km/h like 80-20");
    }
    return new Window(Double.parseDouble(speeds.group(1)), Double.parseDouble(speeds.group(2)));
  }

  private ReductionOptions level(String text) {
    return switch (text) {
      case "first" -> options.on(Anchor.FIRST_REFERENCE);
      case "average" -> options.on(Anchor.GRAND_MEAN);
      default -> throw refusal("level", text, "first or average");
    };
  }

  private ReductionOptions drift(String text) {
    return switch (text) {
      case "always" -> options.correcting(ReductionOptions.Drift.ALWAYS);
      case "significant" -> options.correcting(ReductionOptions.Drift.WHERE_SIGNIFICANT);
      default -> throw refusal("drift", text, "always or significant");
    };
  }

  private ReductionOptions driftLimit(String text) {
    Matcher perCent = PER_CENT.matcher(text);
    if (!perCent.matches()) {
      throw refusal("drift limit", text, "a percentage like 5 %");
    }
    double fraction = Double.parseDouble(perCent.group(1)) / 100;
    return options.within(options.limits().withDriftAtMost(fraction));
  }

  private ReductionOptions openEnd(String text) {
    return switch (text) {
      case "nearest" -> options.atOpenEnds(ReductionOptions.OpenEnd.NEAREST);
      case "refuse" -> options.atOpenEnds(ReductionOptions.OpenEnd.REFUSE);
      default -> throw refusal("open end", text, "nearest or refuse");
    };
  }

  private ReductionOptions coastBy(String text) {
    for (TyreClass tyreClass : TyreClass.values()) {
      if (tyreClass.name().toLowerCase(Locale.ROOT).equals(text)) {
        return options.coastingBy(tyreClass);
      }
    }
    throw refusal("coast-by", text, "the tyres' class C1, C2 or C3");
  }

  private static Refusal refusal(String topic, String found, String expected) {
    return new Refusal(
        topic + ": found \"" + found + "\", expected " + expected,
        new Problem(topic, found, expected));
  }
}
