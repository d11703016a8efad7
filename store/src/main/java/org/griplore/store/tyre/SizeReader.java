package org.griplore.store.tyre;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads size designations; the meaning of RF depends on where it stands. */
final class SizeReader {
  private static final String CODE = "(?<code>ZRF|ZR|RF|R|D|B|-)";
  private static final String RIM = "(?<rim>\\d{1,2}(?:\\.5)?)";
  private static final Pattern METRIC =
      Pattern.compile(
          "(?<![\\w/.,-])(?<prefix>P|LT|T|HL)? ?(?<width>\\d{3}) ?(?:/ ?(?<aspect>\\d{2,3}) ?"
              + CODE
              + "|(?<plain>R|ZR)) ?"
              + RIM
              + "(?:(?<kind> ?LT| ?C)(?![A-Z-]))?(?![\\d])");
  private static final Pattern FLOTATION =
      Pattern.compile(
          "(?<![\\w/.,-])(?<prefix>LT)? ?(?<diameter>\\d{2}(?:\\.\\d{1,2})?) ?[X×] ?"
              + "(?<width>\\d{1,2}(?:\\.\\d{1,2})?) ?"
              + CODE
              + " ?"
              + RIM
              + "(?<kind> ?LT|C)?(?![\\d])");
  private static final Pattern SERVICE =
      Pattern.compile(
          " ?(?<open>\\()? ?(?<load>\\d{2,3})(?: ?/ ?(?<dual>\\d{2,3}))? ?(?<speed>[B-HJ-NP-WY])"
              + "(?![A-Z0-9])(?: ?(?<close>\\)))?");
  private static final Pattern EXTRA_LOAD =
      Pattern.compile(" ?(?:XL|RF|REINF\\.?|REINFORCED|EXTRA[ -]LOAD)(?![A-Z0-9])");
  private static final Pattern STANDARD_LOAD = Pattern.compile(" ?SL(?![A-Z0-9])");
  private static final Pattern MUD_AND_SNOW = Pattern.compile(" ?M ?[+&./-]? ?S(?![A-Z0-9])");
  private static final Pattern SNOWFLAKE =
      Pattern.compile(" ?(?:3 ?PMSF|ALPINE SYMBOL|SNOWFLAKE)(?![A-Z0-9])");

  private SizeReader() {}

  /**
   * A text that is a size and nothing else.
   *
   * @throws IllegalArgumentException when a figure is beyond what road tyres have
   */
  static Optional<TyreSize> whole(String text) {
    String plain = plain(text).strip();
    Reading reading = start(plain, 0);
    if (reading == null || reading.start != 0) {
      return Optional.empty();
    }
    reading.readMarks(plain);
    return reading.end == plain.length() ? Optional.of(reading.size()) : Optional.empty();
  }

  /** The first size in a longer text; figures beyond road tyres are taken for something else. */
  static Optional<TyreSize.Within> within(String text) {
    String plain = plain(text);
    for (Reading reading = start(plain, 0); reading != null; reading = start(plain, reading.end)) {
      reading.readMarks(plain);
      try {
        return Optional.of(new TyreSize.Within(reading.size(), reading.start, reading.end));
      } catch (IllegalArgumentException noRoadTyre) {
        continue;
      }
    }
    return Optional.empty();
  }

  /**
   * Upper case, decimal points, and a single blank wherever the text has any. Letters are raised
   * one by one, so that places in a text without doubled blanks stay what they are.
   */
  private static String plain(String text) {
    StringBuilder upper = new StringBuilder(text.length());
    text.chars().forEach(letter -> upper.append((char) Character.toUpperCase(letter)));
    return upper
        .toString()
        .replaceAll("[\\s\\u00a0\\u202f]+", " ")
        .replaceAll("(?<=\\d),(?=\\d)", ".");
  }

  private static Reading start(String plain, int from) {
    Matcher metric = METRIC.matcher(plain);
    Matcher flotation = FLOTATION.matcher(plain);
    boolean hasMetric = metric.find(from);
    boolean hasFlotation = flotation.find(from);
    if (hasMetric && (!hasFlotation || metric.start() <= flotation.start())) {
      return new Reading(metric, true);
    }
    return hasFlotation ? new Reading(flotation, false) : null;
  }

  /** One size being read: where it began, how far it reaches, and what it said so far. */
  private static final class Reading {
    private final Matcher head;
    private final boolean metric;
    private final int start;
    private int end;
    private Matcher service;
    private boolean extraLoad;
    private boolean mudAndSnow;
    private boolean snowflake;

    Reading(Matcher head, boolean metric) {
      this.head = head;
      this.metric = metric;
      this.start = head.start();
      this.end = head.end();
    }

    void readMarks(String plain) {
      int before = -1;
      while (before != end) {
        before = end;
        extraLoad |= skip(EXTRA_LOAD, plain);
        mudAndSnow |= skip(MUD_AND_SNOW, plain);
        snowflake |= skip(SNOWFLAKE, plain);
        skip(STANDARD_LOAD, plain);
        Matcher next = SERVICE.matcher(plain).region(end, plain.length());
        if (service == null && next.lookingAt() && !leftOpen(next)) {
          service = next;
          end = next.end(next.group("open") == null ? "speed" : "close");
        }
      }
    }

    private static boolean leftOpen(Matcher service) {
      return service.group("open") != null && service.group("close") == null;
    }

    private boolean skip(Pattern mark, String plain) {
      Matcher next = mark.matcher(plain).region(end, plain.length());
      if (!next.lookingAt()) {
        return false;
      }
      end = next.end();
      return true;
    }

    /**
     * The size.
     *
     * @throws IllegalArgumentException when a figure is beyond what road tyres have
     */
    TyreSize size() {
      String kind = head.group("kind") == null ? "" : head.group("kind").strip();
      String prefix = head.group("prefix") == null ? "" : head.group("prefix");
      return new TyreSize(
          SizePrefix.ofSymbol(kind.equals("LT") ? "LT" : prefix),
          section(),
          Structure.ofSymbol(code()),
          Double.parseDouble(head.group("rim")),
          kind.equals("C"),
          Optional.ofNullable(service).map(Reading::description),
          extraLoad,
          mudAndSnow,
          snowflake);
    }

    private String code() {
      return metric && head.group("plain") != null ? head.group("plain") : head.group("code");
    }

    private Section section() {
      if (!metric) {
        return new Section.Flotation(
            Double.parseDouble(head.group("diameter")), Double.parseDouble(head.group("width")));
      }
      String aspect = head.group("aspect");
      return new Section.Metric(
          Integer.parseInt(head.group("width")),
          aspect == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(aspect)));
    }

    private static ServiceDescription description(Matcher service) {
      String dual = service.group("dual");
      return new ServiceDescription(
          Integer.parseInt(service.group("load")),
          dual == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(dual)),
          SpeedSymbol.of(service.group("speed")).orElseThrow(),
          service.group("open") != null);
    }
  }
}
