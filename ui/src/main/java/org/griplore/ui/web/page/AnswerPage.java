package org.griplore.ui.web.page;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.griplore.query.answer.Answer;
import org.griplore.query.option.Option;
import org.griplore.query.question.Question;
import org.griplore.ui.web.chart.Chart;

/**
 * The page of a question that is answered: its plots, its table and what else stands beside them;
 * or its form alone where it needs words that it was not given.
 *
 * @param <R> what one row of its answers is about
 * @param plots the plots of an answer
 * @param layout the whole page
 */
public record AnswerPage<R>(
    Question<R> question, Function<Answer<R>, List<Chart>> plots, Layout<R> layout)
    implements QuestionPage {
  /** Lays out the page of an answer. */
  @FunctionalInterface
  public interface Layout<R> {
    String of(AnswerView<R> view, Pages pages);
  }

  /** A form where words are missing. */
  public record AskView(Question<?> question, Form form) {}

  /** Plots, table, and what was left out. */
  public static <R> AnswerPage<R> of(Question<R> question) {
    return new AnswerPage<>(
        question, answer -> List.of(), (view, pages) -> pages.render("answer.jte", view));
  }

  /** The same with plots. */
  public AnswerPage<R> drawing(Function<Answer<R>, List<Chart>> drawn) {
    return new AnswerPage<>(question, drawn, layout);
  }

  /** The same with a page of its own. */
  public AnswerPage<R> laidOut(Layout<R> own) {
    return new AnswerPage<>(question, plots, own);
  }

  @Override
  public String of(Pages pages, Map<String, List<String>> given, boolean whole) {
    if (given.isEmpty() && question.options().stream().anyMatch(Option::isNeeded)) {
      return pages.render(
          "ask.jte", new AskView(question, Form.of(question, Map.of(), pages.offers())));
    }
    return layout.of(view(pages, given, whole), pages);
  }

  /** The answer as a page shows it. */
  public AnswerView<R> view(Pages pages, Map<String, List<String>> given, boolean whole) {
    Answer<R> answer = pages.ask(question, given);
    return AnswerView.of(question, answer, pages, whole).with(plots.apply(answer));
  }
}
