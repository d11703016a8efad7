package org.griplore.ui.web.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.TestFacts;
import org.griplore.query.browse.TestQuestion.TyreRow;
import org.griplore.query.log.LogRow;
import org.griplore.query.notes.FindQuestion;
import org.griplore.query.notes.NoteRow;
import org.griplore.ui.render.Shown;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.notes.FindView;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;

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
    AnswerView<TyreRow> view,
    String key,
    Map<String, String> details,
    List<String> tyres,
    String reference,
    LabelsView labels,
    RunLogView runs,
    List<FindView.Hit> notes,
    String allNotes) {
  public static String page(AnswerView<TyreRow> view, Pages pages) {
    List<String> key = view.answer().inquiry().options().get("test");
    AnswerView<LogRow> runs = RunLogView.RUNS.view(pages, Map.of("test", key), true);
    Answer<NoteRow> notes =
        pages.ask(new FindQuestion(), Map.of("text", List.of("*"), "test", key));
    return pages.render("test.jte", of(view.with(runs.charts()), RunLogView.of(runs), notes));
  }

  private static TestView of(AnswerView<TyreRow> view, RunLogView runs, Answer<NoteRow> notes) {
    Answer<TyreRow> test = view.answer();
    Map<String, List<String>> asked = test.inquiry().options();
    String key = asked.get("test").get(0);
    Map<String, String> details = new LinkedHashMap<>();
    put(details, "Date", test.whole(TestFacts.DATE));
    put(details, "Size", test.whole(TestFacts.SIZE));
    put(details, "Season", test.whole(TestFacts.SEASON));
    put(details, "Vehicle", test.whole(TestFacts.VEHICLE));
    put(details, "Vehicle\u2019s mass, kg", test.whole(TestFacts.VEHICLE_MASS).map(Shown::plain));
    put(details, "Venue", test.whole(TestFacts.VENUE));
    put(details, "Surface, \u00b0C", test.whole(TestFacts.SURFACE).map(Shown::plain));
    put(details, "Air, \u00b0C", test.whole(TestFacts.AIR).map(Shown::plain));
    put(details, "Source", test.whole(TestFacts.KIND));
    put(details, "Published by", test.whole(TestFacts.PUBLICATION));
    return new TestView(
        view,
        key,
        details,
        test.rows().stream().map(TyreRow::model).distinct().sorted().toList(),
        asked.containsKey("reference") ? asked.get("reference").get(0) : null,
        LabelsView.of(test.whole(TestFacts.LABELS).orElseThrow(), test.inquiry()),
        runs,
        new ArrayList<>(FindView.hits(notes)),
        notes.later().isEmpty() ? null : Addresses.page(notes.inquiry()));
  }

  private static void put(Map<String, String> details, String name, Optional<String> told) {
    told.ifPresent(text -> details.put(name, text));
  }
}
