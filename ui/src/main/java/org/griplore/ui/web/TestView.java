package org.griplore.ui.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.TestQuestion.TyreRow;
import org.griplore.ui.render.Shown;

/**
 * What a test's page shows beside its table.
 *
 * @param key the test's key
 * @param details what is known of it, by name
 * @param tyres the models that differences can be shown to
 * @param reference the model chosen; null when they are to the best
 * @param labels what the tyre label would say
 * @param runs its logged runs
 * @param notes the test's notes
 * @param allNotes where all of them are; null when they are all here
 */
public record TestView(
    String key,
    Map<String, String> details,
    List<String> tyres,
    String reference,
    LabelsView labels,
    RunLogView runs,
    List<FindView.Hit> notes,
    String allNotes) {
  private static final Map<String, String> NAMES = new LinkedHashMap<>();

  static {
    NAMES.put("date", "Date");
    NAMES.put("size", "Size");
    NAMES.put("season", "Season");
    NAMES.put("vehicle", "Vehicle");
    NAMES.put("vehicleMassKg", "Vehicle’s mass, kg");
    NAMES.put("venue", "Place");
    NAMES.put("surfaceC", "Surface, °C");
    NAMES.put("airC", "Air, °C");
    NAMES.put("kind", "Source");
    NAMES.put("publication", "Published by");
  }

  static TestView of(Answer<?> test, Answer<?> log, Answer<?> notes) {
    Map<String, List<String>> asked = test.inquiry().options();
    String key = asked.get("test").get(0);
    Map<String, String> details = new LinkedHashMap<>();
    NAMES.forEach(
        (name, label) -> {
          Object value = test.relations().get(name);
          if (value != null) {
            details.put(label, value instanceof Double d ? Shown.plain(d) : value.toString());
          }
        });
    return new TestView(
        key,
        details,
        test.rows().stream()
            .map(TyreRow.class::cast)
            .map(TyreRow::model)
            .distinct()
            .sorted()
            .toList(),
        asked.containsKey("reference") ? asked.get("reference").get(0) : null,
        LabelsView.of(test),
        RunLogView.of(log),
        new ArrayList<>(FindView.hits(notes)),
        notes.excluded().isEmpty() ? null : Addresses.page(notes.inquiry()));
  }
}
