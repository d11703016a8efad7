package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.query.answer.Answer;
import org.griplore.query.dependence.ContrastPoint;
import org.griplore.query.dependence.DependsRow;
import org.griplore.query.dependence.FittedPoint;
import org.griplore.ui.web.link.Addresses;

/** Draws the contrast inside each test against a moderator, with the fitted line. */
public final class DependsCharts {
  private static final int HEIGHT = 250;
  private static final int BAND = 1;
  private static final int FIT = 2;
  private static final double MARGIN = 0.03;
  private static final String KEY =
      " Dot: a test with both sides, the larger the more tyres; plus: the first side is better.";
  private static final String FITTED = " Line: the fit; band: its 95 % interval.";

  private DependsCharts() {}

  public static List<Chart> of(Answer<DependsRow> answer) {
    List<Chart> charts = new ArrayList<>();
    for (DependsRow row : answer.rows()) {
      if (row.points().size() > 1) {
        charts.add(chart(row, charts));
      }
    }
    return charts;
  }

  private static Chart chart(DependsRow row, List<Chart> before) {
    String key = before.isEmpty() ? KEY : "";
    String fitted =
        row.line().isEmpty() || before.stream().anyMatch(chart -> chart.title().endsWith(FITTED))
            ? ""
            : FITTED;
    String title =
        row.measuredAs().substring(0, 1).toUpperCase(Locale.ROOT)
            + row.measuredAs().substring(1)
            + ": "
            + row.verdict()
            + "."
            + key
            + fitted;
    ObjectNode specification = Charts.specification("depends", title, HEIGHT, points(row));
    ObjectNode x = (ObjectNode) specification.at("/encoding/x");
    x.put("title", xTitle(row));
    double margin = Math.max(MARGIN * (row.highest() - row.lowest()), 0.5);
    ((ObjectNode) x.get("scale"))
        .putArray("domain")
        .add(row.lowest() - margin)
        .add(row.highest() + margin);
    ((ObjectNode) x.get("axis")).put("format", "d");
    ((ObjectNode) specification.at("/encoding/y"))
        .put("title", "contrast, " + row.unit().replaceFirst(" per .*$", ""));
    if (row.line().isEmpty()) {
      // layers over no data have no extent, and the words must not promise a line
      ArrayNode layers = (ArrayNode) specification.get("layer");
      layers.remove(FIT);
      layers.remove(BAND);
    } else {
      specification.putObject("datasets").set("line", line(row));
    }
    return new Chart("chart-depends-" + row.moderator(), title, HEIGHT, specification);
  }

  private static String xTitle(DependsRow row) {
    return row.measuredAs() + (row.in().isEmpty() ? "" : ", " + row.in());
  }

  private static ArrayNode points(DependsRow row) {
    ArrayNode values = Charts.JSON.createArrayNode();
    for (ContrastPoint point : row.points()) {
      values
          .addObject()
          .put("test", point.test())
          .put("date", point.date())
          .put("at", point.at())
          .put("difference", point.difference())
          .put("first", point.first())
          .put("second", point.second())
          .put("weight", point.weight())
          .put("address", Addresses.test(point.test()));
    }
    return values;
  }

  private static ArrayNode line(DependsRow row) {
    ArrayNode values = Charts.JSON.createArrayNode();
    for (FittedPoint point : row.line()) {
      values
          .addObject()
          .put("at", point.at())
          .put("expected", point.expected())
          .put("low", point.low())
          .put("high", point.high());
    }
    return values;
  }
}
