package org.griplore.ui.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.ui.web.gate.WriteGate;

/** What every page is laid out with: templates, what the archive offers, and the gate of forms. */
public final class Pages {
  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, Pages.class.getClassLoader(), "org.griplore.ui.pages");
  private final QueryContext queryContext;
  private final WriteGate writing;
  private final Offers offers;
  private final Citation citation;

  public Pages(QueryContext queryContext, WriteGate writing) {
    this.queryContext = queryContext;
    this.writing = writing;
    this.offers = new Offers(queryContext);
    this.citation = new Citation(queryContext.archive());
  }

  /** Answers a question that a page shows beside its own. */
  public <R> Answer<R> ask(Question<R> question, Map<String, List<String>> options) {
    return Questions.ask(question, queryContext, options);
  }

  public QueryContext queryContext() {
    return queryContext;
  }

  public WriteGate writing() {
    return writing;
  }

  public Offers offers() {
    return offers;
  }

  Citation citation() {
    return citation;
  }

  /** A page from its template, which takes what it shows as its one parameter. */
  public String render(String template, Record shown) {
    StringOutput out = new StringOutput();
    templates.render(template, shown, out);
    return out.toString();
  }
}
