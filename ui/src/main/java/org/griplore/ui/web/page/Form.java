package org.griplore.ui.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.query.option.Option;
import org.griplore.query.question.Question;

/**
 * The form that asks a question, made from the question's options.
 *
 * @param action where it leads
 * @param fields one for each option
 * @param offers names to pick from, for the fields that name one
 */
public record Form(String action, List<Field> fields, List<Offers.NameList> offers) {
  /** How a field is filled in. */
  public enum Way {
    TYPED,
    CHOSEN,
    TICKED
  }

  /**
   * One option's field.
   *
   * @param values what was given; a control for each, and an empty one where more can be given
   * @param choices what it can be; empty when it is free
   * @param usual what holds when it is left empty; empty when nothing does
   * @param offer id of the names offered; null when none are
   */
  public record Field(
      String name,
      String label,
      String meaning,
      Way way,
      List<String> values,
      List<Choice> choices,
      String usual,
      String offer) {
    /** Whether a choice was made. */
    public boolean has(String value) {
      return values.contains(value);
    }
  }

  /** A word to choose, and how it is shown. */
  public record Choice(String value, String label) {}

  public static Form of(Question<?> question, Map<String, List<String>> given, Offers offers) {
    List<Field> fields = new ArrayList<>();
    List<Offers.NameList> offered = new ArrayList<>();
    for (Option option : question.options()) {
      Field field = field(option, given.getOrDefault(option.name(), List.of()), offers);
      fields.add(field);
      offers.list(field.offer()).filter(list -> !offered.contains(list)).ifPresent(offered::add);
    }
    return new Form("/" + question.kind(), fields, offered);
  }

  private static Field field(Option option, List<String> given, Offers offers) {
    boolean many = option.isMany();
    List<Choice> choices =
        option.isDiscipline()
            ? offers.disciplines()
            : option.words().stream().map(word -> new Choice(word, word)).toList();
    Way way =
        choices.isEmpty()
            ? Way.TYPED
            : option.given() == Option.Given.FLAG || many && choices.size() <= 6
                ? Way.TICKED
                : Way.CHOSEN;
    boolean another = way != Way.TICKED && (given.isEmpty() || many && !isText(option));
    List<String> values =
        isText(option) && !given.isEmpty()
            ? List.of(String.join(" ", given))
            : Stream.concat(given.stream(), another ? Stream.of("") : Stream.empty()).toList();
    return new Field(
        option.name(),
        label(option.name()),
        option.meaning().replaceAll("--([a-z]+)", "$1"),
        way,
        values,
        choices,
        option.fallback() == null ? "" : option.fallback(),
        Offers.listFor(option));
  }

  /** Words to search for stand in one field, however many there are. */
  private static boolean isText(Option option) {
    return option.value().equals("TEXT");
  }

  private static String label(String name) {
    String words = name.replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
