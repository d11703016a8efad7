package org.griplore.ui.web.record;

import java.util.List;
import org.griplore.query.browse.LineageQuestion;
import org.griplore.query.browse.LineageQuestion.Fact;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Offers;
import org.griplore.ui.web.page.Pages;

/**
 * The page on which a model's descent is decided.
 *
 * @param models names to pick from
 * @param token what its forms must hold
 * @param closed why nothing can be decided; null when it can
 */
public record DescentView(
    AnswerView<Fact> view, Offers.NameList models, String token, String closed) {
  public static String page(AnswerView<Fact> view, Pages pages) {
    return pages.render(
        "descent.jte",
        new DescentView(
            view, pages.offers().models(), pages.writing().token(), pages.writing().whyClosed()));
  }

  /** The model's full name. */
  public String model() {
    return view.answer().whole(LineageQuestion.MODEL).orElseThrow();
  }

  /** What is known of it. */
  public List<Fact> facts() {
    return view.answer().rows();
  }
}
