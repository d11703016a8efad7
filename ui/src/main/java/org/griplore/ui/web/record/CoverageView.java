package org.griplore.ui.web.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.browse.CoverageQuestion.CoverageRow;
import org.griplore.ui.render.Shown;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;
import org.griplore.ui.web.page.TableView;

/**
 * The grid of models and disciplines.
 *
 * @param heads the disciplines
 * @param rows the models of this page
 */
public record CoverageView(AnswerView<CoverageRow> view, List<Head> heads, List<Row> rows) {
  /** A discipline; its address asks which models were never tested in it. */
  public record Head(String label, String address, boolean missing) {}

  /** A model with its cells in the order of the heads. */
  public record Row(
      TableView.CellView model,
      String season,
      TableView.CellView tests,
      TableView.CellView last,
      List<Box> boxes) {}

  /**
   * One model in one discipline.
   *
   * @param text number of tests; empty where there is none
   * @param address the tests; null where there is none
   * @param level how dark it is: {@code few} to {@code many}, {@code gap} where others of its
   *     season class were tested, {@code none} where none was
   */
  public record Box(String text, String address, String level) {}

  public static String page(AnswerView<CoverageRow> view, Pages pages) {
    return pages.render("coverage.jte", of(view));
  }

  private static CoverageView of(AnswerView<CoverageRow> view) {
    Answer<CoverageRow> answer = view.answer();
    List<Column<CoverageRow>> disciplines =
        answer.columns().stream().skip(4).filter(column -> !column.detail()).toList();
    List<String> missing = answer.inquiry().options().getOrDefault("missing", List.of());
    List<Head> heads =
        disciplines.stream().map(column -> head(answer, column.key(), missing)).toList();
    List<Row> rows = new ArrayList<>();
    for (CoverageRow row : answer.rows()) {
      List<Box> boxes = new ArrayList<>();
      for (Column<CoverageRow> discipline : disciplines) {
        boxes.add(
            box(
                row,
                discipline.key(),
                discipline.lead(row, answer.inquiry()).map(Addresses::of).orElse(null)));
      }
      rows.add(
          new Row(
              TableView.CellView.of(row.model(), Addresses.model(row.model()), "words"),
              row.season() == null ? Shown.MISSING : row.season(),
              TableView.CellView.of(
                  String.valueOf(row.tests()), link(answer, "tests", row), "number"),
              TableView.CellView.of(
                  row.lastYear() == null ? Shown.MISSING : String.valueOf(row.lastYear()),
                  link(answer, "lastYear", row),
                  "number"),
              boxes));
    }
    return new CoverageView(view, heads, rows);
  }

  private static Head head(Answer<?> answer, String discipline, List<String> missing) {
    boolean chosen = missing.contains(discipline);
    List<String> others =
        chosen
            ? missing.stream().filter(key -> !key.equals(discipline)).toList()
            : java.util.stream.Stream.concat(
                    missing.stream(), java.util.stream.Stream.of(discipline))
                .toList();
    Map<String, List<String>> options = new java.util.LinkedHashMap<>(answer.inquiry().options());
    options.remove("skip");
    options.put("missing", others);
    return new Head(discipline, Addresses.of(answer.inquiry().kind(), options), chosen);
  }

  private static String link(Answer<CoverageRow> answer, String key, CoverageRow row) {
    return answer.lead(key, row).map(Addresses::of).orElse(null);
  }

  private static Box box(CoverageRow row, String discipline, String address) {
    Integer tests = row.counts().get(discipline);
    if (tests == null) {
      return new Box("", null, row.gaps().contains(discipline) ? "gap" : "none");
    }
    String level = tests == 1 ? "one" : tests <= 3 ? "few" : tests <= 7 ? "some" : "many";
    return new Box(String.valueOf(tests), address, level);
  }
}
