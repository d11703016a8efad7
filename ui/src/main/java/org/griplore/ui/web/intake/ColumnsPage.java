package org.griplore.ui.web.intake;

import io.javalin.http.Context;
import java.time.Clock;
import java.util.List;
import org.griplore.query.question.QueryContext;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.gate.WriteGate;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;

/** What was said of tables' columns and is used for later tables, and a form to forget it. */
public final class ColumnsPage {
  /**
   * What is remembered.
   *
   * @param closed why nothing can be forgotten; null when it can
   */
  public record Remembered(List<RememberedView> maps, String token, String closed) {}

  private final QueryContext queryContext;
  private final Pages pages;
  private final WriteGate writing;
  private final Clock clock;

  public ColumnsPage(QueryContext queryContext, Pages pages, WriteGate writing, Clock clock) {
    this.queryContext = queryContext;
    this.pages = pages;
    this.writing = writing;
    this.clock = clock;
  }

  public String list() {
    return pages.render(
        "columns.jte",
        new Remembered(
            queryContext.archive().columnMaps().stream().map(RememberedView::of).toList(),
            writing.token(),
            writing.whyClosed()));
  }

  /** The page of an answer about sources, which leads here. */
  public static <R> String besideSources(AnswerView<R> view, Pages pages) {
    return pages.render(
        "answer.jte",
        view.leadingOn(
            new AnswerView.Way("What is remembered of tables\u2019 columns", Addresses.COLUMNS)));
  }

  /** Forgets one, and leads back to the list. */
  public void forget(Context context) {
    String number = context.formParam("forget");
    if (number == null || !number.matches("\\d{1,9}")) {
      throw new Refusal(
          "The form does not say which columns to forget; nothing was forgotten.",
          new Problem(
              "forget", number == null ? "" : number, "a number listed at " + Addresses.COLUMNS));
    }
    queryContext.archive().forgetColumns(Integer.parseInt(number), clock);
    WriteGate.lead(context, Addresses.COLUMNS);
  }
}
