package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.griplore.query.answer.Answer;
import org.griplore.query.tradeoff.TradeoffRow;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.link.Symbols;

/**
 * Draws models in two disciplines: dots with their intervals, the front, and an arrow for each step
 * from one generation to the next. A frame drawn over the dots filters the table.
 */
public final class TradeoffCharts {
  private static final int HEIGHT = 460;
  private static final double MARGIN = 0.06;

  private TradeoffCharts() {}

  public static List<Chart> of(Answer<TradeoffRow> answer) {
    List<TradeoffRow> rows = answer.rows();
    if (rows.isEmpty()) {
      return List.of();
    }
    Domain x = Domain.of(rows, List.of(TradeoffRow::xLow, TradeoffRow::x, TradeoffRow::xHigh));
    Domain y = Domain.of(rows, List.of(TradeoffRow::yLow, TradeoffRow::y, TradeoffRow::yHigh));
    String title =
        "Dot: a model against the mean, further right and further up is better; bars: 95 %"
            + " intervals. Filled dots and the dashed line: the front, which no other model beats in"
            + " both. Arrows lead from a generation to the next. Draw a frame over dots to keep only"
            + " their rows in the table below.";
    ObjectNode specification =
        Charts.specification("tradeoff", title, HEIGHT, models(rows, x.middle()));
    axis(specification, "x", answer.columns().get(1).heading(), x);
    axis(specification, "y", answer.columns().get(5).heading(), y);
    specification.putObject("datasets").set("steps", steps(rows, x, y));
    return List.of(new Chart("chart-tradeoff", title, HEIGHT, specification));
  }

  private record Domain(double low, double high) {
    static Domain of(List<TradeoffRow> rows, List<Function<TradeoffRow, Double>> figures) {
      DoubleStream all =
          rows.stream()
              .flatMap(row -> figures.stream().map(figure -> figure.apply(row)))
              .filter(figure -> figure != null)
              .mapToDouble(figure -> figure);
      var told = all.summaryStatistics();
      double margin = Math.max(MARGIN * (told.getMax() - told.getMin()), 0.1);
      return new Domain(told.getMin() - margin, told.getMax() + margin);
    }

    double middle() {
      return (low + high) / 2;
    }

    double span() {
      return high - low;
    }
  }

  private static void axis(ObjectNode specification, String axis, String title, Domain domain) {
    ObjectNode encoding = (ObjectNode) specification.at("/encoding/" + axis);
    encoding.put("title", Symbols.set(title) + ", plus is better");
    ((ObjectNode) encoding.get("scale")).putArray("domain").add(domain.low()).add(domain.high());
  }

  private static ArrayNode models(List<TradeoffRow> rows, double middle) {
    ArrayNode values = Charts.JSON.createArrayNode();
    for (TradeoffRow row : rows) {
      values
          .addObject()
          .put("model", row.model())
          .put("x", row.x())
          .put("xLow", row.xLow())
          .put("xHigh", row.xHigh())
          .put("y", row.y())
          .put("yLow", row.yLow())
          .put("yHigh", row.yHigh())
          .put("front", row.front())
          .put("frontChance", row.frontChance())
          .put("tests", row.tests())
          .put("side", row.x() < middle ? "left" : "right")
          .put("address", Addresses.model(row.model()));
    }
    return values;
  }

  private static ArrayNode steps(List<TradeoffRow> rows, Domain x, Domain y) {
    Map<String, TradeoffRow> byModel = new HashMap<>();
    rows.forEach(row -> byModel.put(row.model(), row));
    ArrayNode values = Charts.JSON.createArrayNode();
    for (TradeoffRow row : rows) {
      if (row.step() != null) {
        TradeoffRow older = byModel.get(row.step().older());
        values
            .addObject()
            .put("older", older.model())
            .put("newer", row.model())
            .put("x", older.x())
            .put("y", older.y())
            .put("newX", row.x())
            .put("newY", row.y())
            .put("dx", row.step().dx())
            .put("dy", row.step().dy())
            .put("spanX", x.span())
            .put("spanY", y.span());
      }
    }
    return values;
  }
}
