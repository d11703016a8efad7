package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.outlook.BacktestQuestion.BacktestRow;
import org.griplore.ui.web.link.Addresses;

/** Draws the share of results that intervals held beside the share they were meant to hold. */
public final class BacktestCharts {
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;

  private BacktestCharts() {}

  public static List<Chart> of(Answer<BacktestRow> answer) {
    if (answer.rows().isEmpty()) {
      return List.of();
    }
    ArrayNode values = Charts.JSON.createArrayNode();
    for (BacktestRow backtest : answer.rows()) {
      add(values, backtest, 0.5, backtest.coverage50());
      add(values, backtest, 0.8, backtest.coverage80());
      add(values, backtest, 0.95, backtest.coverage95());
    }
    String title =
        "Dots: share of results that the 50, 80 and 95 % intervals held, the stronger the wider."
            + " Upright lines: what they were meant to hold. Few results scatter widely around it.";
    int height = ROW_HEIGHT * answer.rows().size() + AXIS;
    return List.of(
        new Chart(
            "chart-held", title, height, Charts.specification("held", title, height, values)));
  }

  private static void add(ArrayNode values, BacktestRow row, double meant, double held) {
    values
        .addObject()
        .put("discipline", row.discipline())
        .put("meant", meant)
        .put("held", held)
        .put("results", row.results())
        .put("address", Addresses.discipline(row.discipline()));
  }
}
