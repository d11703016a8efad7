package org.griplore.ui.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.griplore.query.answer.Answer;
import org.griplore.query.placings.Placing;
import org.griplore.query.placings.PlacingRow;

/** Draws placings: shares with their intervals, and for few models every place over the years. */
final class PlacingsCharts {
  private static final int MODELS_WITH_YEARS = 4;
  private static final int MODELS_DRAWN = 60;
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;
  private static final int YEARS_HEIGHT = 200;

  private PlacingsCharts() {}

  static List<Chart> of(Answer<?> answer) {
    List<PlacingRow> rows = answer.rows().stream().map(PlacingRow.class::cast).toList();
    List<Chart> charts = new ArrayList<>();
    if (rows.isEmpty()) {
      return charts;
    }
    charts.add(shares(answer, rows));
    if (rows.size() <= MODELS_WITH_YEARS) {
      rows.forEach(row -> years(row, rows).ifPresent(charts::add));
    }
    return charts;
  }

  private static Chart shares(Answer<?> answer, List<PlacingRow> rows) {
    List<PlacingRow> drawn = rows.stream().limit(MODELS_DRAWN).toList();
    ArrayNode values = Charts.JSON.createArrayNode();
    for (PlacingRow row : drawn) {
      values
          .addObject()
          .put("model", row.model())
          .put("share", row.share())
          .put("low", row.shareLow())
          .put("high", row.shareHigh())
          .put("within", row.within())
          .put("tests", row.tests())
          .put("chance", row.expectedByChance())
          .put("address", Addresses.with(answer.asked(), "model", row.model()));
    }
    String title =
        "Dot: share of tests among the first. Bar: its 95 % Wilson interval. Upright stroke: the"
            + " share that chance alone would give."
            + (drawn.size() < rows.size()
                ? " The first %d of %d models are drawn.".formatted(drawn.size(), rows.size())
                : "");
    int height = ROW_HEIGHT * drawn.size() + AXIS;
    return new Chart(
        "chart-shares", title, height, Charts.specification("shares", title, height, values));
  }

  private static java.util.Optional<Chart> years(PlacingRow row, List<PlacingRow> all) {
    ArrayNode values = Charts.JSON.createArrayNode();
    for (Placing placing : row.places()) {
      if (placing.date() != null) {
        values
            .addObject()
            .put("date", placing.date())
            .put("first", 1)
            .put("place", placing.place())
            .put("field", placing.field())
            .put("test", placing.test())
            .put("address", Addresses.test(placing.test()));
      }
    }
    if (values.isEmpty()) {
      return java.util.Optional.empty();
    }
    String title =
        "Places of %s over the years; each line is as long as its field.".formatted(row.model());
    ObjectNode specification = Charts.specification("places", title, YEARS_HEIGHT, values);
    scales(specification, all);
    return java.util.Optional.of(
        new Chart("chart-places-" + all.indexOf(row), title, YEARS_HEIGHT, specification));
  }

  /** The same scales for all models, so that they can be compared. */
  private static void scales(ObjectNode specification, List<PlacingRow> rows) {
    int first =
        rows.stream()
            .map(PlacingRow::firstYear)
            .filter(Objects::nonNull)
            .mapToInt(y -> y)
            .min()
            .orElseThrow();
    int last =
        rows.stream()
            .map(PlacingRow::lastYear)
            .filter(Objects::nonNull)
            .mapToInt(y -> y)
            .max()
            .orElseThrow();
    int field =
        rows.stream()
            .flatMap(row -> row.places().stream())
            .mapToInt(Placing::field)
            .max()
            .orElse(1);
    ObjectNode encoding = (ObjectNode) specification.get("encoding");
    ((ObjectNode) encoding.at("/x/scale"))
        .putArray("domain")
        .add(first + "-01-01")
        .add(last + "-12-31");
    ((ObjectNode) encoding.at("/y/scale")).putArray("domain").add(0.5).add(field + 0.5);
    ArrayNode ticks = ((ObjectNode) encoding.at("/y/axis")).putArray("values");
    for (int place = 1; place <= field; place += field > 8 ? 3 : field > 4 ? 2 : 1) {
      ticks.add(place);
    }
  }
}
