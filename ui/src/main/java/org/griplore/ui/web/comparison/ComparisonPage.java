package org.griplore.ui.web.comparison;

import java.util.List;
import java.util.Map;
import org.griplore.query.question.Question;
import org.griplore.query.table.TableQuestion;
import org.griplore.query.table.TableRow;
import org.griplore.ui.web.page.AnswerPage;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;
import org.griplore.ui.web.page.QuestionPage;

/** The builder of comparison tables, with the table once it has a tyre. */
public final class ComparisonPage implements QuestionPage {
  /**
   * What the page shows.
   *
   * @param view the answer; null while no tyre is chosen
   * @param table its table; null likewise
   */
  public record Shown(ComparisonForm form, AnswerView<TableRow> view, ComparisonView table) {}

  private final AnswerPage<TableRow> answered = AnswerPage.of(new TableQuestion());

  @Override
  public Question<?> question() {
    return answered.question();
  }

  @Override
  public String of(Pages pages, Map<String, List<String>> given, boolean whole) {
    AnswerView<TableRow> view =
        given.containsKey("models") ? answered.view(pages, given, true) : null;
    List<String> tyres =
        view == null ? List.of() : view.answer().rows().stream().map(TableRow::model).toList();
    return pages.render(
        "comparison.jte",
        new Shown(
            ComparisonForm.of(question(), given, tyres, pages.offers()),
            view,
            view == null ? null : ComparisonView.of(view.answer())));
  }
}
