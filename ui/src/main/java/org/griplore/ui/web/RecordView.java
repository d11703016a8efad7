package org.griplore.ui.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.evidence.Filter;
import org.griplore.query.profile.LineQuestion;
import org.griplore.query.profile.ModelQuestion;
import org.griplore.query.profile.ModelQuestion.Known;
import org.griplore.query.question.QueryContext;

/**
 * What the page of a model or a line shows beside its table.
 *
 * @param lineage the models before and after, or of the line
 * @param details what is known of a model, by name
 * @param ways further questions about it, each with its address
 * @param places plots of places over the years
 * @param steps the generation steps; null when there are none
 * @param notes the newest notes
 * @param allNotes where all of them are; null when they are all here
 */
public record RecordView(
    LineageView lineage,
    Map<String, String> details,
    Map<String, String> ways,
    List<Chart> places,
    StepsView steps,
    List<FindView.Hit> notes,
    String allNotes) {
  private static final int NOTES = 6;

  /** The generation steps with their own page. */
  public record StepsView(String summary, TableView table, String address) {}

  static RecordView ofModel(Answer<?> answer, QueryContext queryContext) {
    Known known = answer.whole(ModelQuestion.KNOWN).orElseThrow();
    Map<String, List<String>> filters = Filter.given(answer.inquiry());
    Answer<?> notes =
        ask(
            queryContext,
            "find",
            with(
                noteFilters(filters),
                Map.of(
                    "text", List.of("*"),
                    "model", List.of(known.model()),
                    "limit", List.of(String.valueOf(NOTES)))));
    return new RecordView(
        lineage(queryContext, known.family(), known.model()),
        details(known),
        ways(known, answer, filters),
        ProfileCharts.places(answer),
        steps(answer, queryContext, "line", List.of(known.model()), filters),
        FindView.hits(notes),
        notes.excluded().isEmpty()
            ? null
            : Addresses.of("find", Map.of("text", List.of("*"), "model", List.of(known.model()))));
  }

  static RecordView ofLine(Answer<?> answer, QueryContext queryContext) {
    List<String> models =
        answer.whole(LineQuestion.KNOWN).orElseThrow().stream().map(Known::model).toList();
    List<String> lines = answer.inquiry().options().get("line");
    Map<String, List<String>> filters = Filter.given(answer.inquiry());
    Map<String, String> ways = new LinkedHashMap<>();
    ways.put("Coverage", Addresses.of("coverage", Map.of("line", lines)));
    ways.put("Placings", Addresses.of("placings", with(filters, Map.of("model", models))));
    return new RecordView(
        lineage(queryContext, models, null),
        Map.of(),
        ways,
        List.of(),
        steps(answer, queryContext, "line", lines, filters),
        List.of(),
        null);
  }

  private static LineageView lineage(
      QueryContext queryContext, List<String> models, String current) {
    return LineageView.of(ask(queryContext, "models", Map.of("line", models)), current);
  }

  private static Map<String, String> details(Known known) {
    Map<String, String> details = new LinkedHashMap<>();
    put(details, "Line", known.line());
    put(details, "Season", known.season());
    put(details, "Launched", known.launched());
    put(details, "Segment", known.segment());
    put(
        details,
        "Also written",
        known.aliases().isEmpty() ? null : String.join(", ", known.aliases()));
    return details;
  }

  private static void put(Map<String, String> details, String name, String value) {
    if (value != null) {
      details.put(name, value);
    }
  }

  private static Map<String, String> ways(
      Known known, Answer<?> answer, Map<String, List<String>> filters) {
    List<String> model = List.of(known.model());
    Map<String, String> ways = new LinkedHashMap<>();
    ways.put("Placings", Addresses.of("placings", with(filters, Map.of("model", model))));
    ways.put("Tests", Addresses.of("tests", with(filters, Map.of("model", model))));
    if (known.follows() != null) {
      ways.put("Against " + known.follows(), contrast(known.model(), known.follows(), filters));
    }
    known
        .followedBy()
        .forEach(next -> ways.put("Against " + next, contrast(known.model(), next, filters)));
    ways.put("Descent, and who says so", Addresses.of("lineage", Map.of("model", model)));
    if (answer.hasEvidence()) {
      ways.put("Add a note", Addresses.note("model", known.model()));
    }
    return ways;
  }

  private static String contrast(String one, String other, Map<String, List<String>> filters) {
    return Addresses.of("contrast", with(filters, Map.of("model", List.of(one, other))));
  }

  private static StepsView steps(
      Answer<?> answer,
      QueryContext queryContext,
      String option,
      List<String> names,
      Map<String, List<String>> filters) {
    Map<String, List<String>> options = with(filters, Map.of(option, names));
    String discipline =
        answer.inquiry().options().getOrDefault("discipline", List.of("overall")).get(0);
    if (!discipline.equals("overall")) {
      options.put("discipline", List.of(discipline));
    } else if (answer.inquiry().options().containsKey("discipline")) {
      return null;
    }
    return steps(ask(queryContext, "generations", options));
  }

  private static <R> StepsView steps(Answer<R> steps) {
    return steps.hasEvidence()
        ? new StepsView(
            steps.summary(),
            TableView.of(steps.columns(), steps.rows(), steps.inquiry()),
            Addresses.page(steps.inquiry()))
        : null;
  }

  /** The filters that questions about notes know too. */
  private static Map<String, List<String>> noteFilters(Map<String, List<String>> filters) {
    Map<String, List<String>> kept = new LinkedHashMap<>(filters);
    kept.keySet().retainAll(List.of("size", "from", "to", "source"));
    return kept;
  }

  private static Map<String, List<String>> with(
      Map<String, List<String>> filters, Map<String, List<String>> more) {
    Map<String, List<String>> options = new LinkedHashMap<>(more);
    options.putAll(filters);
    return options;
  }

  private static Answer<?> ask(
      QueryContext queryContext, String kind, Map<String, List<String>> options) {
    return Questions.ask(Questions.of(kind).orElseThrow(), queryContext, options);
  }
}
