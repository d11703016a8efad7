package org.griplore.ui.web;

import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.question.Question;

/**
 * A page about one answer.
 *
 * @param question the question's definition, for its form
 * @param answer the answer
 * @param table its rows
 * @param inner the tables inside the rows, when there are few rows
 * @param charts its plots
 */
public record AnswerView(
    Question question,
    Answer<?> answer,
    TableView table,
    List<TableView.Inner> inner,
    List<Chart> charts) {
  private static final int ROWS_OPENED = 3;

  /** Lays out an answer. */
  public static <R> AnswerView of(Question question, Answer<R> answer) {
    List<Column<R>> columns = answer.columns();
    return new AnswerView(
        question,
        answer,
        TableView.of(columns, answer.rows()),
        answer.rows().size() <= ROWS_OPENED ? TableView.inner(columns, answer.rows()) : List.of(),
        Charts.of(answer));
  }

  /** What was given for an option, for its field in the form. */
  public List<String> given(String option) {
    return answer.asked().options().getOrDefault(option, List.of());
  }

  /** The address of the same answer in another form. */
  public String form(String ending) {
    return Addresses.form(answer.asked(), ending);
  }
}
