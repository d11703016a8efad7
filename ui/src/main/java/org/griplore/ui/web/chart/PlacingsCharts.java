package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.placings.PlacingRow;
import org.griplore.ui.web.link.Addresses;

/** Draws placings: shares with their intervals, and for few models every place over the years. */
public final class PlacingsCharts {
  private static final int MODELS_WITH_YEARS = 4;
  private static final int MODELS_DRAWN = 60;
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;
  private static final int YEARS_HEIGHT = 200;

  private PlacingsCharts() {}

  public static List<Chart> of(Answer<PlacingRow> answer) {
    List<PlacingRow> rows = answer.rows();
    List<Chart> charts = new ArrayList<>();
    if (rows.isEmpty()) {
      return charts;
    }
    charts.add(shares(answer, rows));
    if (rows.size() <= MODELS_WITH_YEARS) {
      charts.addAll(years(rows));
    }
    return charts;
  }

  private static Chart shares(Answer<PlacingRow> answer, List<PlacingRow> rows) {
    List<PlacingRow> drawn = rows.stream().limit(MODELS_DRAWN).toList();
    ArrayNode values = Charts.JSON.createArrayNode();
    for (PlacingRow row : drawn) {
      values
          .addObject()
          .put("model", row.model())
          .put("share", row.share())
          .put("low", row.shareLow())
          .put("high", row.shareHigh())
          .put("within", row.within().doubleValue())
          .put("tests", row.tests())
          .put("chance", row.expectedByChance())
          .put("address", Addresses.with(answer.inquiry(), "model", row.model()));
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

  private static List<PlacesChart.Dot> dots(PlacingRow row) {
    return row.places().stream()
        .filter(placing -> placing.date() != null)
        .map(
            placing ->
                new PlacesChart.Dot(
                    placing.date(), placing.place(), placing.field(), placing.test()))
        .toList();
  }

  /** Every model's places over the years, on the same scales. */
  private static List<Chart> years(List<PlacingRow> rows) {
    List<Chart> charts = new ArrayList<>();
    PlacesChart.Scales.of(rows.stream().flatMap(row -> dots(row).stream()).toList())
        .ifPresent(
            scales -> {
              for (PlacingRow row : rows) {
                String title =
                    "Places of %s over the years; each line is as long as its field."
                        .formatted(row.model());
                PlacesChart.of(
                        "chart-places-" + rows.indexOf(row), title, YEARS_HEIGHT, dots(row), scales)
                    .ifPresent(charts::add);
              }
            });
    return charts;
  }
}
