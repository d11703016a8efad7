package org.griplore.ui.web.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.griplore.query.question.Question;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.page.Form;
import org.griplore.ui.web.page.Offers;

/**
 * The builder of a comparison table. Every choice is an option of the question, so the address
 * holds the whole state.
 *
 * @param chips the tyres asked for
 * @param fields the question's options that have a field of their own, by name
 * @param further the options that are under "More"
 * @param references what differences can be to, besides best and mean
 * @param columns the disciplines to choose columns from; those chosen are ticked
 * @param chosen keys of the chosen columns; none for all with evidence
 * @param offered names offered while one types
 */
public record ComparisonForm(
    List<Chip> chips,
    Map<String, Form.Field> fields,
    List<Form.Field> further,
    List<String> references,
    List<Form.Choice> columns,
    Set<String> chosen,
    Offers.NameList offered) {
  private static final List<String> OWN =
      List.of("models", "with", "size", "mass", "reference", "discipline", "weights");

  /** A tyre asked for, and the address of the table without it. */
  public record Chip(String name, String without) {}

  /**
   * Lays out the builder.
   *
   * @param rows the tyres of the table, those that joined it too
   */
  public static ComparisonForm of(
      Question<?> question, Map<String, List<String>> given, List<String> rows, Offers offers) {
    List<String> models = given.getOrDefault("models", List.of());
    List<Chip> chips = new ArrayList<>();
    for (String model : models) {
      String[] others = models.stream().filter(m -> !m.equals(model)).toArray(String[]::new);
      chips.add(new Chip(model, Addresses.with(question.kind(), given, "models", others)));
    }
    Map<String, Form.Field> fields = new LinkedHashMap<>();
    List<Form.Field> further = new ArrayList<>();
    for (Form.Field field : Form.of(question, given, offers).fields()) {
      fields.put(field.name(), field);
      if (!OWN.contains(field.name())) {
        further.add(field);
      }
    }
    Stream<String> keys =
        given.getOrDefault("discipline", List.of()).stream()
            .flatMap(value -> Stream.of(value.split(",")))
            .map(String::strip);
    return new ComparisonForm(
        chips,
        fields,
        further,
        Stream.concat(rows.stream(), given.getOrDefault("reference", List.of()).stream())
            .filter(name -> !name.equals("best") && !name.equals("mean"))
            .distinct()
            .toList(),
        offers.disciplines().stream().filter(d -> !d.value().equals("overall")).toList(),
        Set.copyOf(keys.toList()),
        offers.models());
  }

  /** What was given for an option, or nothing. */
  public String given(String option) {
    return fields.get(option).values().stream()
        .filter(value -> !value.isEmpty())
        .collect(Collectors.joining(","));
  }

  /** Whether any further option narrows the table. */
  public boolean isNarrowed() {
    return further.stream()
        .anyMatch(field -> field.values().stream().anyMatch(value -> !value.isEmpty()));
  }
}
