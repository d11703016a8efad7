package org.griplore.ui.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.compare.GenerationsQuestion.GenerationRow;
import org.griplore.query.compare.StandingsByPlaces.PlacesRow;
import org.griplore.query.compare.StandingsQuestion.StandingRow;
import org.griplore.query.estimate.Difference;

/** Draws differences with their intervals, a plot for each unit. */
final class EffectsCharts {
  private static final int DRAWN = 60;
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;
  private static final String BAR =
      "Dot: difference, plus is better. Bar: its 95 % interval. Upright line: no difference.";

  private EffectsCharts() {}

  /** One dot with its bar. */
  private record Dot(
      String label,
      Double effect,
      Double low,
      Double high,
      String unit,
      int tests,
      String address) {}

  static List<Chart> of(Answer<?> answer) {
    List<Dot> dots = answer.rows().stream().map(EffectsCharts::dot).toList();
    Map<String, List<Dot>> byUnit = new LinkedHashMap<>();
    for (Dot dot : dots) {
      if (dot.effect() != null) {
        byUnit.computeIfAbsent(dot.unit(), unit -> new ArrayList<>()).add(dot);
      }
    }
    List<Chart> charts = new ArrayList<>();
    byUnit.forEach((unit, of) -> charts.add(chart(unit, of, charts.size())));
    return charts;
  }

  private static Dot dot(Object row) {
    if (row instanceof StandingRow standing) {
      return new Dot(
          standing.model(),
          standing.effect(),
          standing.low(),
          standing.high(),
          standing.unit(),
          standing.tests(),
          Addresses.model(standing.model()));
    }
    if (row instanceof PlacesRow places) {
      return new Dot(
          places.model(),
          places.effect(),
          places.low(),
          places.high(),
          "log worth",
          places.tests(),
          Addresses.model(places.model()));
    }
    if (row instanceof ContrastRow contrast) {
      return dot(contrast.discipline(), contrast.difference(), contrast.discipline());
    }
    GenerationRow step = (GenerationRow) row;
    return dot(step.newer() + ", " + step.discipline(), step.step(), step.discipline());
  }

  private static Dot dot(String label, Difference difference, String discipline) {
    return new Dot(
        label,
        difference.difference(),
        difference.low(),
        difference.high(),
        difference.unit(),
        difference.directTests(),
        Addresses.discipline(discipline));
  }

  private static Chart chart(String unit, List<Dot> dots, int number) {
    List<Dot> drawn = dots.stream().limit(DRAWN).toList();
    ArrayNode values = Charts.JSON.createArrayNode();
    for (Dot dot : drawn) {
      ObjectNode value =
          values
              .addObject()
              .put("label", dot.label())
              .put("effect", dot.effect())
              .put("unit", dot.unit())
              .put("tests", dot.tests())
              .put("address", dot.address());
      if (dot.low() != null) {
        value.put("low", dot.low()).put("high", dot.high());
      }
    }
    String title =
        BAR
            + " In "
            + (unit.equals("%") ? "per cent of performance" : unit)
            + "."
            + (drawn.size() < dots.size()
                ? " The first %d of %d are drawn.".formatted(drawn.size(), dots.size())
                : "");
    int height = ROW_HEIGHT * drawn.size() + AXIS;
    return new Chart(
        "chart-effects-" + number,
        title,
        height,
        Charts.specification("effects", title, height, values));
  }
}
