package org.griplore.ui.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.HoldingsQuestion.HoldingsRow;
import org.griplore.query.placings.Placing;
import org.griplore.query.placings.PlacingRow;

/** Makes the plots of answers from the rows; the specifications' shapes are resources. */
final class Charts {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int MODELS_PLOTTED = 6;

  private Charts() {}

  static List<Chart> of(Answer<?> answer) {
    return switch (answer.asked().kind()) {
      case "holdings" -> holdings(answer);
      case "placings" -> placings(answer);
      default -> List.of();
    };
  }

  private static List<Chart> holdings(Answer<?> answer) {
    ArrayNode values = JSON.createArrayNode();
    for (Object row : answer.rows()) {
      HoldingsRow holding = (HoldingsRow) row;
      if (holding.year() != null) {
        values
            .addObject()
            .put("year", holding.year())
            .put("discipline", holding.discipline())
            .put("tests", holding.tests())
            .put("results", holding.results())
            .put("address", Addresses.discipline(holding.discipline()));
      }
    }
    return values.isEmpty()
        ? List.of()
        : List.of(
            chart(
                "holdings", "Number of tests by year and discipline: " + answer.summary(), values));
  }

  private static List<Chart> placings(Answer<?> answer) {
    List<Chart> charts = new ArrayList<>();
    if (answer.rows().size() > MODELS_PLOTTED) {
      return charts;
    }
    for (Object row : answer.rows()) {
      PlacingRow model = (PlacingRow) row;
      ArrayNode values = JSON.createArrayNode();
      for (Placing placing : model.places()) {
        if (placing.date() != null) {
          values
              .addObject()
              .put("date", placing.date())
              .put("place", placing.place())
              .put("field", placing.field())
              .put("test", placing.test())
              .put("address", Addresses.test(placing.test()));
        }
      }
      if (!values.isEmpty()) {
        charts.add(
            chart(
                "placings-" + charts.size(),
                "Places of " + model.model() + " by date, each with the size of its field.",
                values));
      }
    }
    return charts;
  }

  private static Chart chart(String id, String title, ArrayNode values) {
    String shape = id.replaceAll("-\\d+$", "");
    ObjectNode specification = (ObjectNode) shape(shape);
    specification.put("description", title);
    specification.putObject("data").set("values", values);
    return new Chart("chart-" + id, title, specification);
  }

  private static JsonNode shape(String name) {
    try (InputStream in = Charts.class.getResourceAsStream("charts/" + name + ".json")) {
      return JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
