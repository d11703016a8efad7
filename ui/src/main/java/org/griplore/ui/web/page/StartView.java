package org.griplore.ui.web.page;

import java.util.Map;
import org.griplore.query.browse.HoldingsQuestion.HoldingsRow;

/**
 * The first page: what the archive holds, and where to ask.
 *
 * @param models names to pick from
 */
public record StartView(AnswerView<HoldingsRow> view, Offers.NameList models) {
  public static String page(AnswerPage<HoldingsRow> holdings, Pages pages) {
    return pages.render(
        "start.jte", new StartView(holdings.view(pages, Map.of(), true), pages.offers().models()));
  }
}
