package org.griplore.ui.web.settle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.griplore.query.question.QueryContext;
import org.griplore.store.names.OpenName;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Offers;
import org.griplore.ui.web.page.Pages;

/**
 * The page on which names are settled.
 *
 * @param made what was decided on names, the newest first
 * @param models names to pick from
 * @param token what its forms must hold
 * @param closed why nothing can be decided; null when it can
 */
public record SettleView(
    AnswerView<OpenName> view,
    List<Decision> made,
    Offers.NameList models,
    String token,
    String closed) {
  public static String page(AnswerView<OpenName> view, Pages pages) {
    return pages.render(
        "settle.jte",
        new SettleView(
            view,
            made(pages.queryContext()),
            pages.offers().models(),
            pages.writing().token(),
            pages.writing().whyClosed()));
  }

  private static List<Decision> made(QueryContext queryContext) {
    List<Decision> made =
        new ArrayList<>(
            queryContext.archive().decisions().stream()
                .filter(decision -> decision.topic() == Topic.MEANING)
                .toList());
    Collections.reverse(made);
    return made;
  }

  /** The undecided names. */
  public List<OpenName> names() {
    return view.answer().rows();
  }
}
