package org.griplore.ui.web.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.log.LogQuestion;
import org.griplore.query.log.LogReduced;
import org.griplore.query.log.LogRow;
import org.griplore.ui.render.Shown;
import org.griplore.ui.web.chart.Chart;
import org.griplore.ui.web.chart.TraceCharts;
import org.griplore.ui.web.link.Symbols;
import org.griplore.ui.web.page.AnswerPage;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;
import org.griplore.ui.web.page.TableView;

/**
 * The runs of a test as a page shows them.
 *
 * @param logs one a discipline and file
 */
public record RunLogView(AnswerView<LogRow> view, List<Log> logs) {
  /** The page of a test's runs. */
  public static final AnswerPage<LogRow> RUNS =
      AnswerPage.of(new LogQuestion()).drawing(TraceCharts::of).laidOut(RunLogView::page);

  /**
   * One log.
   *
   * @param heading discipline and file
   * @param chart its plot; null when it was not reduced
   * @param facts what a reader must know to judge it, by name
   * @param sets the sets in order
   * @param runs the runs of each set, by its heading
   */
  public record Log(
      String heading,
      Chart chart,
      Map<String, List<String>> facts,
      TableView sets,
      List<TableView.Inner> runs) {}

  private static String page(AnswerView<LogRow> view, Pages pages) {
    return pages.render("log.jte", of(view));
  }

  /** The runs of an answer, log by log. */
  public static RunLogView of(AnswerView<LogRow> view) {
    Answer<LogRow> log = view.answer();
    Map<List<String>, List<LogRow>> parts = new LinkedHashMap<>();
    log.rows()
        .forEach(
            row ->
                parts
                    .computeIfAbsent(
                        List.of(row.discipline(), row.file()), key -> new ArrayList<>())
                    .add(row));
    List<Chart> charts = view.charts();
    List<Log> logs = new ArrayList<>();
    parts.forEach(
        (part, sets) -> {
          LogReduced reduced = reduced(log, part.get(0), part.get(1));
          logs.add(
              new Log(
                  part.get(0) + ", " + part.get(1),
                  reduced == null ? null : chart(charts, TraceCharts.id(reduced)),
                  reduced == null ? Map.of() : facts(reduced),
                  TableView.of(
                      log.columns().stream()
                          .filter(column -> !column.key().equals("discipline"))
                          .toList(),
                      sets,
                      log.inquiry()),
                  sets.stream().map(set -> runs(log, set)).toList()));
        });
    return new RunLogView(view, logs);
  }

  private static TableView.Inner runs(Answer<LogRow> log, LogRow set) {
    String heading = "Sequence " + set.sequence() + ", " + set.tyre() + ", " + set.role();
    return new TableView.Inner(
        heading, TableView.inner(log.columns(), List.of(set), log.inquiry()).get(0).table());
  }

  private static LogReduced reduced(Answer<LogRow> answer, String discipline, String file) {
    return answer.whole(LogQuestion.REDUCTIONS).orElseThrow().stream()
        .filter(of -> of.discipline().equals(discipline) && of.file().equals(file))
        .findFirst()
        .orElse(null);
  }

  private static Chart chart(List<Chart> charts, String id) {
    return charts.stream().filter(chart -> chart.id().equals(id)).findFirst().orElse(null);
  }

  private static Map<String, List<String>> facts(LogReduced reduced) {
    Map<String, List<String>> facts = new LinkedHashMap<>();
    String unit = Symbols.set(reduced.unit());
    facts.put("Averaged", List.of((reduced.measure() + window(reduced)).strip()));
    facts.put(
        "Level",
        List.of(
            (reduced.level() == null ? "" : Shown.number(reduced.level(), 4) + " " + unit + ", ")
                + reduced.levelMeans()));
    facts.put("Difference", List.of(reduced.compared()));
    facts.put("Reference", List.of(Symbols.set(reduced.traceSaid())));
    if (!reduced.cycles().isEmpty()) {
      facts.put("Cycles", reduced.cycles());
    }
    facts.put(
        "Limits",
        reduced.limits().isEmpty()
            ? List.of("none published for this discipline is known here")
            : reduced.limits());
    return facts;
  }

  private static String window(LogReduced reduced) {
    return reduced.fromKmh() == null
        ? ""
        : " from "
            + Shown.plain(reduced.fromKmh())
            + " to "
            + Shown.plain(reduced.toKmh())
            + " km/h";
  }
}
