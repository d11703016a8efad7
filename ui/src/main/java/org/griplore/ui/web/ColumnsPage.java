package org.griplore.ui.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import org.griplore.query.question.QueryContext;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** What was said of tables' columns and is used for later tables, and a form to forget it. */
final class ColumnsPage {
  static final String PATH = "/columns";

  private final QueryContext queryContext;
  private final Pages pages;
  private final WriteGate writing;
  private final Clock clock;

  ColumnsPage(QueryContext queryContext, Pages pages, WriteGate writing, Clock clock) {
    this.queryContext = queryContext;
    this.pages = pages;
    this.writing = writing;
    this.clock = clock;
  }

  String list() {
    Map<String, Object> values = new HashMap<>();
    values.put(
        "maps", queryContext.archive().columnMaps().stream().map(RememberedView::of).toList());
    values.put("token", writing.token());
    values.put("closed", writing.whyClosed());
    return pages.render("columns.jte", values);
  }

  /** Forgets one, and leads back to the list. */
  void forget(Context context) {
    String number = context.formParam("forget");
    if (number == null || !number.matches("\\d{1,9}")) {
      throw new Refusal(
          "The form does not say which columns to forget; nothing was forgotten.",
          new Problem("forget", number == null ? "" : number, "a number listed at " + PATH));
    }
    queryContext.archive().forgetColumns(Integer.parseInt(number), clock);
    WriteGate.lead(context, PATH);
  }
}
