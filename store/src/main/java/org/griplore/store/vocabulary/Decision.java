package org.griplore.store.vocabulary;

import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What the user decided on a name: which model it means, or what holds of a model's descent. The
 * newest decision on a name and topic stands; an earlier one stays readable.
 *
 * @param name the name as written; names that differ in case, accents and punctuation are one
 * @param topic what is decided
 * @param verdict how
 * @param value the model's name, or what holds; null unless the verdict is {@link Verdict#IS}
 * @param decidedAt when
 * @param words why, in the user's or the program's words; may be empty
 */
public record Decision(
    String name, Topic topic, Verdict verdict, String value, Instant decidedAt, String words) {
  /** What can be decided. */
  public enum Topic {
    /** The model that the name means. */
    MEANING,
    /** The model's maker. */
    MAKER,
    /** The family of products it belongs to. */
    LINE,
    /** The generation's own mark within the line. */
    GENERATION,
    /** When it came to market: a year or a date. */
    LAUNCHED,
    /** The season class. */
    SEASON,
    /** The market segment. */
    SEGMENT,
    /** The model's predecessor. */
    FOLLOWS;

    /** The word used in commands and files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The topic with this word. */
    public static Optional<Topic> ofWord(String word) {
      return Arrays.stream(values()).filter(topic -> topic.word().equals(word)).findFirst();
    }
  }

  /** How it is decided. */
  public enum Verdict {
    /** It is the value. */
    IS,
    /** There is none: the name means no other model, the model has no predecessor. */
    NONE,
    /** Taken back: what the sources say holds. */
    OPEN;

    /** The word used in files and stored. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The verdict with this word. */
    public static Optional<Verdict> ofWord(String word) {
      return Arrays.stream(values()).filter(verdict -> verdict.word().equals(word)).findFirst();
    }
  }

  /** Checks that a value is there exactly when the verdict needs one. */
  public Decision {
    Objects.requireNonNull(name);
    Objects.requireNonNull(decidedAt);
    Objects.requireNonNull(words);
    if ((value != null) != (verdict == Verdict.IS)) {
      throw new IllegalArgumentException(topic + " " + verdict + " with value " + value);
    }
  }

  /** The name in its comparing form. */
  public String key() {
    return NameKey.of(name);
  }

  /** Whether the other says the same of the same name, whenever and for whatever reason. */
  public boolean agreesWith(Decision other) {
    return topic == other.topic
        && verdict == other.verdict
        && key().equals(other.key())
        && Objects.equals(comparable(), other.comparable());
  }

  private String comparable() {
    boolean isName = topic == Topic.MEANING || topic == Topic.FOLLOWS;
    return value != null && isName ? NameKey.of(value) : value;
  }

  /** What is decided, as a clause: {@code "X" is the same as Y}. */
  public String clause() {
    return "\"" + name + "\" " + verb() + (value == null ? "" : " " + value);
  }

  /** What is decided, without the name and the value: {@code is the same as}. */
  public String verb() {
    return switch (topic) {
      case MEANING ->
          switch (verdict) {
            case IS -> "is the same as";
            case NONE -> "is a model of its own";
            case OPEN -> "is undecided";
          };
      case FOLLOWS ->
          switch (verdict) {
            case IS -> "follows";
            case NONE -> "starts its line";
            case OPEN -> "has the predecessor that the sources say";
          };
      default ->
          switch (verdict) {
            case IS -> "has " + thing();
            case NONE -> "has no " + thing().substring(4);
            case OPEN -> "has " + thing() + " that the sources say";
          };
    };
  }

  private String thing() {
    return topic == Topic.LAUNCHED ? "the launch" : "the " + topic.word();
  }
}
