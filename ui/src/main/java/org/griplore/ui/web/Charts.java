package org.griplore.ui.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.griplore.query.answer.Answer;

/**
 * The plots of answers. Their shapes are resources ({@code charts/NAME.json}); the rows go in as
 * data.
 */
final class Charts {
  static final ObjectMapper JSON = new ObjectMapper();

  private Charts() {}

  static List<Chart> of(Answer<?> answer) {
    return switch (answer.inquiry().kind()) {
      case "holdings" -> HoldingsCharts.of(answer);
      case "placings" -> PlacingsCharts.of(answer);
      case "standings", "contrast", "generations", "model", "line" -> EffectsCharts.of(answer);
      case "tradeoff" -> TradeoffCharts.of(answer);
      case "depends" -> DependsCharts.of(answer);
      case "log" -> TraceCharts.of(answer);
      case "outlook" -> OutlookCharts.of(answer);
      case "backtest" -> BacktestCharts.of(answer);
      case "reweigh" -> ReweighCharts.of(answer);
      case "runs" -> RunsCharts.of(answer);
      default -> List.of();
    };
  }

  /** A shape with its description and data; the height is that of the whole drawing. */
  static ObjectNode specification(String shape, String title, int height, ArrayNode values) {
    ObjectNode specification = (ObjectNode) shape(shape);
    specification.put("description", title);
    specification.put("height", height);
    specification.putObject("data").set("values", values);
    return specification;
  }

  private static JsonNode shape(String name) {
    try (InputStream in = Charts.class.getResourceAsStream("charts/" + name + ".json")) {
      return JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
