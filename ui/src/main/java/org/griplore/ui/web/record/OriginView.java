package org.griplore.ui.web.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.OriginQuestion.OriginRow;
import org.griplore.query.browse.ProvenanceStep;
import org.griplore.query.question.QueryContext;
import org.griplore.ui.web.link.Symbols;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;

/**
 * Cells of an answer in the source they stand in.
 *
 * @param surroundings one for each sheet that has one of the cells
 * @param ladders how each value came about
 */
public record OriginView(
    AnswerView<OriginRow> view, List<SourceExcerpt> surroundings, List<Ladder> ladders) {
  /** The way to one value; {@code heading} tells which. */
  public record Ladder(String heading, List<Step> steps) {}

  /**
   * One step.
   *
   * @param before the text found or the figure before; empty where many figures went in
   * @param label what must be said with it; null when nothing must
   * @param place where what went in stands; null when that is the step before
   */
  public record Step(String rule, String before, String after, String label, String place) {
    static Step of(ProvenanceStep rung) {
      return new Step(
          rung.rule(),
          rung.found() != null && rung.before() == null
              ? "\u201c" + rung.found() + "\u201d"
              : figure(rung.before(), rung.beforeUnit()),
          figure(rung.after(), rung.afterUnit()),
          rung.label(),
          rung.cell() == null ? null : rung.cell().place());
    }

    private static String figure(Double value, String unit) {
      return value == null
          ? ""
          : (ProvenanceStep.told(value).replace('-', '\u2212') + " " + Symbols.set(unit)).strip();
    }
  }

  public static String page(AnswerView<OriginRow> view, Pages pages) {
    return pages.render("origin.jte", of(view, pages.queryContext()));
  }

  private static OriginView of(AnswerView<OriginRow> view, QueryContext queryContext) {
    Answer<OriginRow> answer = view.answer();
    Map<String, List<OriginRow>> bySheet = new LinkedHashMap<>();
    for (OriginRow origin : answer.rows()) {
      bySheet
          .computeIfAbsent(origin.sha256() + origin.sheet(), key -> new ArrayList<>())
          .add(origin);
    }
    return new OriginView(
        view,
        bySheet.values().stream()
            .map(cells -> SourceExcerpt.of(cells, queryContext.archive().originals()))
            .toList(),
        answer.rows().stream()
            .filter(row -> !row.steps().isEmpty())
            .map(row -> new Ladder(heading(row), row.steps().stream().map(Step::of).toList()))
            .toList());
  }

  private static String heading(OriginRow row) {
    return "How "
        + ProvenanceStep.told((Double) row.figure())
        + " "
        + Symbols.set(row.unit())
        + " came about";
  }
}
