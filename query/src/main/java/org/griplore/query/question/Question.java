package org.griplore.query.question;

import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;

/** One question that the archive answers. */
public interface Question {
  /** Its word: the command, the address and the {@code kind} in answers. */
  String kind();

  /** What it answers, in one line. */
  String purpose();

  /** An example of the command line, without the program's name. */
  String example();

  /** Its options in the order of the help. */
  List<Option> options();

  /**
   * Answers it.
   *
   * @throws org.griplore.store.vocabulary.Refusal when an option cannot be understood
   */
  Answer<?> answer(QueryContext context, Choices choices);
}
