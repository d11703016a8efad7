package org.griplore.ui.web.page;

import java.util.List;
import java.util.Map;
import org.griplore.query.question.Question;

/** The page of one question. */
public interface QuestionPage {
  /** The question it answers. */
  Question<?> question();

  /**
   * Lays it out.
   *
   * @param given the question's options as given
   * @param whole whether a long table is shown to its end
   * @throws org.griplore.store.vocabulary.Refusal when an option cannot be understood
   */
  String of(Pages pages, Map<String, List<String>> given, boolean whole);
}
