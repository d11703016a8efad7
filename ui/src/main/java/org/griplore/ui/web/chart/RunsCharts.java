package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.plan.RunsRow;

/** Draws runs needed against the difference to be seen. */
public final class RunsCharts {
  private static final int HEIGHT = 260;

  private RunsCharts() {}

  public static List<Chart> of(Answer<RunsRow> answer) {
    List<RunsRow> rows = answer.rows();
    if (rows.size() < 2) {
      return List.of();
    }
    ArrayNode values = Charts.JSON.createArrayNode();
    for (RunsRow row : rows) {
      values.addObject().put("difference", row.difference()).put("runs", row.runs());
    }
    String title =
        "Runs of each set against the difference in %s that they show with power %s; the scale of runs is logarithmic."
            .formatted(rows.get(0).unit(), rows.get(0).power());
    ObjectNode specification = Charts.specification("runs", title, HEIGHT, values);
    ((ObjectNode) specification.at("/encoding/x"))
        .put("title", "difference, " + rows.get(0).unit());
    return List.of(new Chart("chart-runs", title, HEIGHT, specification));
  }
}
