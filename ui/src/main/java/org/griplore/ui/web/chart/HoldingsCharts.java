package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.HoldingsQuestion.HoldingsRow;
import org.griplore.ui.web.link.Addresses;

/** Draws what the archive holds: a disc for every year and discipline, its area the tests. */
public final class HoldingsCharts {
  private static final int ROW_HEIGHT = 21;
  private static final int AXIS_AND_LEGEND = 74;

  private HoldingsCharts() {}

  public static List<Chart> of(Answer<HoldingsRow> answer) {
    ArrayNode values = Charts.JSON.createArrayNode();
    Set<String> disciplines = new HashSet<>();
    int undated = 0;
    for (HoldingsRow holding : answer.rows()) {
      if (holding.year() == null) {
        undated++;
        continue;
      }
      disciplines.add(holding.discipline());
      values
          .addObject()
          .put("year", holding.year())
          .put("discipline", holding.discipline())
          .put("tests", holding.tests())
          .put("results", holding.results())
          .put("address", Addresses.holding(holding.discipline(), holding.year()));
    }
    if (values.isEmpty()) {
      return List.of();
    }
    String title =
        "Tests by year and discipline; the area of a disc is the number of tests."
            + (undated == 0 ? "" : " Tests without a date are in the table only.");
    int height = ROW_HEIGHT * disciplines.size() + AXIS_AND_LEGEND;
    return List.of(
        new Chart(
            "chart-holdings",
            title,
            height,
            Charts.specification("holdings", title, height, values)));
  }
}
