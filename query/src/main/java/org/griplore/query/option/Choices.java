package org.griplore.query.option;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.TestDate;

/** The options given for a question, checked against its definition. */
public final class Choices {
  /** Longer values cannot be meant. */
  private static final int LONGEST = 500;

  private final List<Option> options;
  private final Map<String, List<String>> given;

  private Choices(List<Option> options, Map<String, List<String>> given) {
    this.options = options;
    this.given = given;
  }

  /**
   * Checks what was given against a question's options.
   *
   * @param kind the question's word
   * @param example an example of its command line
   * @throws Refusal when an option is unknown, given too often, missing, too long or not one of its
   *     words
   */
  public static Choices of(
      String kind, String example, List<Option> options, Map<String, List<String>> given) {
    Map<String, List<String>> kept = new LinkedHashMap<>();
    given.forEach(
        (name, values) -> {
          Option option =
              options.stream()
                  .filter(known -> known.name().equals(name))
                  .findFirst()
                  .orElseThrow(() -> unknown(kind, options, name));
          List<String> filled =
              values.stream()
                  .map(value -> option.isDiscipline() ? keys(value) : value.strip())
                  .filter(value -> !value.isEmpty())
                  .toList();
          filled.forEach(value -> check(option, value));
          if (!option.isMany() && filled.size() > 1) {
            throw refusal(name, String.join(", ", filled), "the option once");
          }
          if (!filled.isEmpty()) {
            kept.put(name, filled);
          }
        });
    for (Option option : options) {
      if (option.isNeeded() && !kept.containsKey(option.name())) {
        throw new Refusal(
            "`"
                + kind
                + "` needs "
                + option.value()
                + ": "
                + option.meaning()
                + ", as in `griplore "
                + example
                + "`.",
            new Problem(option.name(), "", option.value()));
      }
    }
    return new Choices(options, kept);
  }

  /** A discipline's key as people may write it: {@code Wet braking} is {@code wet-braking}. */
  static String key(String written) {
    return written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  /** Keys with commas between them. */
  private static String keys(String written) {
    return Arrays.stream(written.split(",")).map(Choices::key).collect(Collectors.joining(","));
  }

  private static void check(Option option, String value) {
    if (value.length() > LONGEST) {
      throw refusal(
          option.name(),
          value.substring(0, 40) + "... (" + value.length() + " characters)",
          "at most " + LONGEST + " characters");
    }
    if (!option.words().isEmpty() && !option.words().contains(value)) {
      throw refusal(option.name(), value, "one of " + String.join(", ", option.words()));
    }
  }

  private static Refusal unknown(String kind, List<Option> options, String name) {
    List<String> names = options.stream().map(Option::name).toList();
    return new Refusal(
        "`" + kind + "` has no option `" + name + "`; it has " + String.join(", ", names) + ".",
        new Problem(name, name, "one of " + String.join(", ", names)));
  }

  /** The refusal of an option's value. */
  public static Refusal refusal(String option, String found, String expected) {
    return new Refusal(
        "Option `" + option + "` is \"" + found + "\"; expected " + expected + ".",
        new Problem(option, found, expected));
  }

  /** What was given, for repeating it in the answer. */
  public Map<String, List<String>> given() {
    return new LinkedHashMap<>(given);
  }

  /** All values of an option; none when it was not given. */
  public List<String> all(String name) {
    return new ArrayList<>(given.getOrDefault(name, List.of()));
  }

  /** Whether the question has an option. */
  public boolean offers(String name) {
    return options.stream().anyMatch(option -> option.name().equals(name));
  }

  /** The same choices as if an option had not been given. */
  public Choices without(String name) {
    Map<String, List<String>> fewer = new LinkedHashMap<>(given);
    fewer.remove(name);
    return new Choices(options, fewer);
  }

  /** Whether the option was given. */
  public boolean has(String name) {
    return given.containsKey(name);
  }

  /** An option's value, else its fallback, else null. */
  public String text(String name) {
    List<String> values = given.get(name);
    return values == null ? fallback(name) : values.get(0);
  }

  private String fallback(String name) {
    return options.stream()
        .filter(option -> option.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no option " + name))
        .fallback();
  }

  /**
   * A whole number.
   *
   * @throws Refusal when it is no whole number from lowest to highest
   */
  public OptionalInt integer(String name, int lowest, int highest) {
    String text = text(name);
    if (text == null) {
      return OptionalInt.empty();
    }
    if (text.matches("[+-]?\\d{1,9}")) {
      int number = Integer.parseInt(text);
      if (number >= lowest && number <= highest) {
        return OptionalInt.of(number);
      }
    }
    throw refusal(name, text, "a whole number from " + lowest + " to " + highest);
  }

  /**
   * A number.
   *
   * @throws Refusal when it is no number from lowest to highest
   */
  public OptionalDouble number(String name, double lowest, double highest) {
    String text = text(name);
    if (text == null) {
      return OptionalDouble.empty();
    }
    if (text.matches("[+-]?(\\d{1,12}(\\.\\d{1,12})?|\\.\\d{1,12})")) {
      double number = Double.parseDouble(text);
      if (number >= lowest && number <= highest) {
        return OptionalDouble.of(number);
      }
    }
    throw refusal(name, text, "a number from " + lowest + " to " + highest);
  }

  /**
   * A date: a day, a month or a year.
   *
   * @throws Refusal when it is none
   */
  public TestDate date(String name) {
    String text = text(name);
    if (text == null) {
      return null;
    }
    try {
      return new TestDate(text);
    } catch (java.time.DateTimeException e) {
      throw refusal(name, text, "a date like 2021, 2021-05 or 2021-05-04");
    }
  }
}
