package org.griplore.query.question;

import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;

/**
 * One question that the archive answers.
 *
 * @param <R> what one row of its answers is about
 */
public interface Question<R> {
  /** Stands for a discipline's key where columns are told before anything is asked. */
  String DISCIPLINE = "DISCIPLINE";

  /** Its word: the command, the address and the {@code kind} in answers. */
  String kind();

  /** What it answers, in one line. */
  String purpose();

  /** An example of the command line, without the program's name. */
  String example();

  /** Its options in the order of the help. */
  List<Option> options();

  /**
   * What is told of each row. Where that depends on what is asked: every column there may be, with
   * {@code DISCIPLINE} standing for a discipline's key.
   */
  List<Column<R>> columns();

  /** The figures about the rows as a whole. */
  default List<WholeFigure<?>> wholes() {
    return List.of();
  }

  /**
   * Answers it.
   *
   * @throws org.griplore.store.vocabulary.Refusal when an option cannot be understood
   */
  Answer<R> answer(QueryContext context, Choices choices);
}
