package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.outlook.OutlookQuestion;
import org.griplore.query.outlook.OutlookRow;
import org.griplore.ui.web.link.Addresses;

/** Draws what is expected of a field, a small plot for each discipline. */
public final class OutlookCharts {
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;

  private OutlookCharts() {}

  public static List<Chart> of(Answer<OutlookRow> answer) {
    Map<String, List<OutlookRow>> byDiscipline = new LinkedHashMap<>();
    for (OutlookRow outlook : answer.rows()) {
      byDiscipline.computeIfAbsent(outlook.discipline(), key -> new ArrayList<>()).add(outlook);
    }
    double level = answer.whole(OutlookQuestion.LEVEL).orElseThrow();
    String title =
        "Dot: expected result in a new test less the mean of the field, plus is better. Bar: where"
            + " %.0f %% of new results are to fall. Each plot has a scale of its own."
                .formatted(100 * level);
    List<Chart> charts = new ArrayList<>();
    byDiscipline.forEach((key, rows) -> charts.add(chart(key, rows, title, charts.size())));
    return charts;
  }

  private static Chart chart(String key, List<OutlookRow> rows, String title, int number) {
    ArrayNode values = Charts.JSON.createArrayNode();
    for (OutlookRow row : rows) {
      values
          .addObject()
          .put("label", row.model())
          .put("effect", row.expected())
          .put("low", row.low())
          .put("high", row.high())
          .put("unit", row.unit())
          .put("tests", row.tests())
          .put("address", Addresses.model(row.model()));
    }
    int height = ROW_HEIGHT * rows.size() + AXIS;
    ObjectNode specification = Charts.specification("effects", title, height, values);
    ((ObjectNode) specification.at("/layer/1/encoding/x/axis")).put("tickCount", 4);
    return new Chart("chart-outlook-" + number, title, height, specification)
        .under(key + ", " + rows.get(0).unit());
  }
}
