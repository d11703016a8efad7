package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.reweigh.ReweighQuestion;
import org.griplore.query.reweigh.ReweighRow;
import org.griplore.ui.web.link.Addresses;

/** Draws how much of all weightings puts each model among the first. */
public final class ReweighCharts {
  private static final int MODELS_DRAWN = 60;
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;

  private ReweighCharts() {}

  public static List<Chart> of(Answer<ReweighRow> answer) {
    List<ReweighRow> drawn = answer.rows().stream().limit(MODELS_DRAWN).toList();
    if (drawn.isEmpty()) {
      return List.of();
    }
    int top = answer.whole(ReweighQuestion.TOP).orElseThrow();
    ArrayNode values = Charts.JSON.createArrayNode();
    for (ReweighRow row : drawn) {
      double from = 0;
      for (int place = 1; place <= Math.min(top, row.acceptability().size()); place++) {
        double share = row.acceptability().get(place - 1).share();
        values
            .addObject()
            .put("model", row.model())
            .put("place", place)
            .put("share", share)
            .put("from", from)
            .put("to", Math.min(1, from + share))
            .put("tone", 1 - 0.7 * (place - 1) / Math.max(1, top - 1))
            .put("within", row.share())
            .put("tests", row.tests())
            .put("address", Addresses.with(answer.inquiry(), "model", row.model()));
        from += share;
      }
    }
    String title =
        "Bar: share of all weightings that put a model among the first %d, the first place strongest."
                .formatted(top)
            + " Upright stroke: its share of tests under the weights of the question."
            + (drawn.size() < answer.rows().size()
                ? " The first %d of %d models are drawn."
                    .formatted(drawn.size(), answer.rows().size())
                : "");
    int height = ROW_HEIGHT * drawn.size() + AXIS;
    return List.of(
        new Chart(
            "chart-weightings",
            title,
            height,
            Charts.specification("weightings", title, height, values)));
  }
}
