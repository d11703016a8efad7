package org.griplore.ui.web.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.ModelsQuestion;
import org.griplore.query.compare.GenerationsQuestion;
import org.griplore.query.evidence.Filter;
import org.griplore.query.notes.FindQuestion;
import org.griplore.query.notes.NoteRow;
import org.griplore.query.profile.LineQuestion;
import org.griplore.query.profile.ModelQuestion;
import org.griplore.query.profile.ModelQuestion.Known;
import org.griplore.query.profile.ProfileRow;
import org.griplore.query.question.CommonOptions;
import org.griplore.ui.web.chart.Chart;
import org.griplore.ui.web.chart.ProfileCharts;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.notes.FindView;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;
import org.griplore.ui.web.page.TableView;

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
    AnswerView<ProfileRow> view,
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

  public static String pageOfModel(AnswerView<ProfileRow> view, Pages pages) {
    return pages.render("record.jte", ofModel(view, pages));
  }

  public static String pageOfLine(AnswerView<ProfileRow> view, Pages pages) {
    return pages.render("record.jte", ofLine(view, pages));
  }

  private static RecordView ofModel(AnswerView<ProfileRow> view, Pages pages) {
    Answer<ProfileRow> answer = view.answer();
    Known known = answer.whole(ModelQuestion.KNOWN).orElseThrow();
    Map<String, List<String>> filters = Filter.given(answer.inquiry());
    Answer<NoteRow> notes =
        pages.ask(
            new FindQuestion(),
            with(
                noteFilters(filters),
                Map.of(
                    "text", List.of("*"),
                    "model", List.of(known.model()),
                    "limit", List.of(String.valueOf(NOTES)))));
    return new RecordView(
        view,
        lineage(pages, known.family(), known.model()),
        details(known),
        ways(known, answer, filters),
        ProfileCharts.places(answer),
        steps(answer, pages, "line", List.of(known.model()), filters),
        FindView.hits(notes),
        notes.later().isEmpty()
            ? null
            : Addresses.of("find", Map.of("text", List.of("*"), "model", List.of(known.model()))));
  }

  private static RecordView ofLine(AnswerView<ProfileRow> view, Pages pages) {
    Answer<ProfileRow> answer = view.answer();
    List<String> models =
        answer.whole(LineQuestion.KNOWN).orElseThrow().stream().map(Known::model).toList();
    List<String> lines = answer.inquiry().options().get("line");
    Map<String, List<String>> filters = Filter.given(answer.inquiry());
    Map<String, String> ways = new LinkedHashMap<>();
    ways.put("Coverage", Addresses.of("coverage", Map.of("line", lines)));
    ways.put("Placings", Addresses.of("placings", with(filters, Map.of("model", models))));
    return new RecordView(
        view,
        lineage(pages, models, null),
        Map.of(),
        ways,
        List.of(),
        steps(answer, pages, "line", lines, filters),
        List.of(),
        null);
  }

  private static LineageView lineage(Pages pages, List<String> models, String current) {
    return LineageView.of(pages.ask(new ModelsQuestion(), Map.of("line", models)), current);
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
      Known known, Answer<ProfileRow> answer, Map<String, List<String>> filters) {
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
      Answer<ProfileRow> answer,
      Pages pages,
      String option,
      List<String> names,
      Map<String, List<String>> filters) {
    Map<String, List<String>> options = with(filters, Map.of(option, names));
    List<String> discipline = answer.inquiry().options().get("discipline");
    if (discipline != null) {
      if (discipline.contains(CommonOptions.OVERALL)) {
        return null; // totals of different reports are never set on one scale
      }
      options.put("discipline", discipline);
    }
    return steps(pages.ask(new GenerationsQuestion(), options));
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
}
