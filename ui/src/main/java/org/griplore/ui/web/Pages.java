package org.griplore.ui.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.LineageQuestion;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.table.TableRow;

/** Lays out the page of every question. */
final class Pages {
  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, Pages.class.getClassLoader(), "org.griplore.ui.pages");
  private final QueryContext queryContext;
  private final WriteGate writing;
  private final Offers offers;
  private final Citation citation;

  Pages(QueryContext queryContext, WriteGate writing) {
    this.queryContext = queryContext;
    this.writing = writing;
    this.offers = new Offers(queryContext);
    this.citation = new Citation(queryContext.archive());
  }

  String start() {
    Question<?> holdings = Questions.of("holdings").orElseThrow();
    return render(
        "start.jte", Map.of("view", view(holdings, Map.of(), true), "models", offers.models()));
  }

  /**
   * The page of an answer, or of the form alone where the question needs words it was not given.
   *
   * @param whole whether a long table is shown to its end
   */
  String of(Question<?> question, Map<String, List<String>> given, boolean whole) {
    if (question.kind().equals("table")) {
      return table(question, given);
    }
    if (given.isEmpty() && question.options().stream().anyMatch(Form::isNeeded)) {
      return render(
          "ask.jte", Map.of("question", question, "form", Form.of(question, Map.of(), offers)));
    }
    AnswerView view = view(question, given, whole);
    return switch (question.kind()) {
      case "find" ->
          render(
              "find.jte", Map.of("view", view, "find", FindView.of(view.answer(), tally(given))));
      case "test" -> {
        TestView test = TestView.of(view.answer(), log(given), notes(given));
        yield render("test.jte", Map.of("view", view.with(test.runs().charts()), "test", test));
      }
      case "log" -> render("log.jte", Map.of("view", view, "runs", RunLogView.of(view.answer())));
      case "model" ->
          render(
              "record.jte",
              Map.of("view", view, "record", RecordView.ofModel(view.answer(), queryContext)));
      case "line" ->
          render(
              "record.jte",
              Map.of("view", view, "record", RecordView.ofLine(view.answer(), queryContext)));
      case "coverage" ->
          render("coverage.jte", Map.of("view", view, "coverage", CoverageView.of(view.answer())));
      case "models" ->
          render("models.jte", Map.of("view", view, "lineage", LineageView.of(view.answer())));
      case "origin" ->
          render(
              "origin.jte",
              Map.of("view", view, "origin", OriginView.of(view.answer(), queryContext)));
      case "settle" -> settle(view);
      case "lineage" -> descent(view);
      default -> render("answer.jte", Map.of("view", view));
    };
  }

  /** The builder of comparison tables, with the table once it has a tyre. */
  private String table(Question<?> question, Map<String, List<String>> given) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    List<String> rows = List.of();
    if (given.containsKey("models")) {
      AnswerView view = view(question, given, true);
      rows = view.answer().rows().stream().map(TableRow.class::cast).map(TableRow::model).toList();
      parameters.put("view", view);
      parameters.put("table", ComparisonView.of(view.answer()));
    }
    parameters.put("form", ComparisonForm.of(question, given, rows, offers));
    return render("comparison.jte", parameters);
  }

  /** The same words and filters, counted; the page's own options do not narrow the counts. */
  private Answer<?> tally(Map<String, List<String>> given) {
    Map<String, List<String>> words = new LinkedHashMap<>(given);
    words.keySet().removeAll(List.of("limit", "skip"));
    return Questions.ask(Questions.of("tally").orElseThrow(), queryContext, words);
  }

  /** The logged runs of the test that is shown. */
  private Answer<?> log(Map<String, List<String>> given) {
    return Questions.ask(
        Questions.of("log").orElseThrow(), queryContext, Map.of("test", given.get("test")));
  }

  /** The notes of the test that is shown. */
  private Answer<?> notes(Map<String, List<String>> given) {
    return Questions.ask(
        Questions.of("find").orElseThrow(),
        queryContext,
        Map.of("text", List.of("*"), "test", given.get("test")));
  }

  private String settle(AnswerView view) {
    Map<String, Object> shown = withForms(view);
    shown.put("names", view.answer().rows());
    shown.put("made", SettlePages.made(queryContext));
    return render("settle.jte", shown);
  }

  private String descent(AnswerView view) {
    Map<String, Object> shown = withForms(view);
    shown.put("model", view.answer().whole(LineageQuestion.MODEL).orElseThrow());
    shown.put("facts", view.answer().rows());
    return render("descent.jte", shown);
  }

  private Map<String, Object> withForms(AnswerView view) {
    Map<String, Object> shown = new HashMap<>();
    shown.put("view", view);
    shown.put("models", offers.models());
    shown.put("token", writing.token());
    shown.put("closed", writing.whyClosed());
    return shown;
  }

  private AnswerView view(Question<?> question, Map<String, List<String>> given, boolean whole) {
    return AnswerView.of(
        question, Questions.ask(question, queryContext, given), offers, citation, whole);
  }

  String refusal(RefusalView view) {
    return render("refusal.jte", Map.of("view", view));
  }

  Offers offers() {
    return offers;
  }

  String render(String template, Map<String, Object> parameters) {
    StringOutput out = new StringOutput();
    templates.render(template, parameters, out);
    return out.toString();
  }
}
