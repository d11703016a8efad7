package org.griplore.query.option;

import java.util.List;

/**
 * An option of a question, the same in command line ({@code --top 3}) and address ({@code top=3}).
 *
 * @param name its name
 * @param value what stands for its value in help: {@code N}, {@code MODEL} ...
 * @param meaning what it does, in a sentence without the final point
 * @param given how often it is given
 * @param fallback the value when it is not given; null when there is none
 * @param words the words it may be; empty when it is free
 */
public record Option(
    String name, String value, String meaning, Given given, String fallback, List<String> words) {
  /** What stands for the value of an option that names disciplines. */
  public static final String DISCIPLINE = "DISCIPLINE";

  /** The value of a flag that is given. */
  public static final String YES = "yes";

  /** How often, and where, an option is given. */
  public enum Given {
    /** At most once, by name. */
    ONCE,
    /** At most once, by name alone; in an address its value is {@code yes}. */
    FLAG,
    /** Any number of times, by name. */
    REPEATED,
    /** At least once, by name. */
    REQUIRED,
    /** Any number of times; the command line takes it without its name. */
    ARGUMENTS,
    /** At least once; the command line takes it without its name. */
    REQUIRED_ARGUMENTS
  }

  /** An option given at most once. */
  public static Option once(String name, String value, String meaning, String fallback) {
    return new Option(name, value, meaning, Given.ONCE, fallback, List.of());
  }

  /** An option that is given or not; the command line takes it without a value. */
  public static Option flag(String name, String meaning) {
    return new Option(name, YES, meaning, Given.FLAG, null, List.of(YES));
  }

  /** An option given any number of times. */
  public static Option repeated(String name, String value, String meaning) {
    return new Option(name, value, meaning, Given.REPEATED, null, List.of());
  }

  /** An option given at least once. */
  public static Option required(String name, String value, String meaning) {
    return new Option(name, value, meaning, Given.REQUIRED, null, List.of());
  }

  /** Whether the question cannot be answered without it. */
  public boolean isNeeded() {
    return given == Given.REQUIRED || given == Given.REQUIRED_ARGUMENTS;
  }

  /** The plain arguments of the command line. */
  public static Option arguments(String name, String value, String meaning, boolean required) {
    return new Option(
        name,
        value,
        meaning,
        required ? Given.REQUIRED_ARGUMENTS : Given.ARGUMENTS,
        null,
        List.of());
  }

  /** The same option, limited to these words. */
  public Option oneOf(List<String> allowed) {
    return new Option(name, value, meaning, given, fallback, List.copyOf(allowed));
  }

  /** Whether its values are disciplines. */
  public boolean isDiscipline() {
    return value.equals(DISCIPLINE);
  }

  /** Whether several values can be given. */
  public boolean isMany() {
    return given != Given.ONCE && given != Given.FLAG;
  }

  /** Whether the command line takes it without its name. */
  public boolean isArgument() {
    return given == Given.ARGUMENTS || given == Given.REQUIRED_ARGUMENTS;
  }
}
