package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.griplore.query.answer.Answer;
import org.griplore.query.compare.ContrastQuestion.ContrastRow;
import org.griplore.query.compare.GenerationsQuestion.GenerationRow;
import org.griplore.query.compare.StandingRow;
import org.griplore.query.discipline.Difference;
import org.griplore.query.profile.ProfileRow;
import org.griplore.ui.web.link.Addresses;

/** Draws differences with their intervals: a plot for each unit, or one for each discipline. */
public final class EffectsCharts {
  private static final int DRAWN = 60;
  private static final int ROW_HEIGHT = 19;
  private static final int AXIS = 32;
  private static final String BAR =
      "Dot: difference, plus is better. Bar: its 95 % interval. Upright line: no difference.";

  private static final String NO_BAR =
      "Dot: difference, plus is better; too few tests for intervals. Upright line: no difference.";
  private static final int BARS = 1;

  private EffectsCharts() {}

  /** One dot with its bar, under the heading of its plot. */
  private record Dot(
      String plot,
      String label,
      Double effect,
      Double low,
      Double high,
      String unit,
      int tests,
      String address) {}

  public static List<Chart> ofStandings(Answer<StandingRow> answer) {
    return of(
        answer,
        row ->
            new Dot(
                row.unit(),
                row.model(),
                row.effect(),
                row.low(),
                row.high(),
                row.unit(),
                row.tests(),
                Addresses.model(row.model())));
  }

  /** The disciplines of one model. */
  public static List<Chart> ofModel(Answer<ProfileRow> answer) {
    return of(answer, row -> dot(row.unit(), row.discipline(), row, behind("effect", row, answer)));
  }

  /** The models of a line, a plot for each discipline. */
  public static List<Chart> ofLine(Answer<ProfileRow> answer) {
    return of(
        answer,
        row ->
            dot(
                row.discipline() + ", " + row.unit(),
                row.model(),
                row,
                behind("effect", row, answer)));
  }

  public static List<Chart> ofContrast(Answer<ContrastRow> answer) {
    return of(
        answer,
        row ->
            dot(
                row.difference().unit(),
                row.discipline(),
                row.difference(),
                behind("difference", row, answer)));
  }

  public static List<Chart> ofGenerations(Answer<GenerationRow> answer) {
    return of(
        answer,
        row ->
            dot(
                row.discipline() + ", " + row.step().unit(),
                apart(row.older(), row.line()) + " \u2192 " + apart(row.newer(), row.line()),
                row.step(),
                behind("step", row, answer)));
  }

  private static <R> List<Chart> of(Answer<R> answer, Function<R, Dot> drawn) {
    Map<String, List<Dot>> plots = new LinkedHashMap<>();
    for (R row : answer.rows()) {
      Dot dot = drawn.apply(row);
      if (dot.effect() != null) {
        plots.computeIfAbsent(dot.plot(), plot -> new ArrayList<>()).add(dot);
      }
    }
    boolean small = plots.keySet().stream().anyMatch(plot -> plot.contains(", "));
    List<Chart> charts = new ArrayList<>();
    plots.forEach(
        (plot, of) -> {
          Chart chart = chart(of, charts.size(), small);
          charts.add(small ? chart.under(plot) : chart);
        });
    return charts;
  }

  private static <R> String behind(String key, R row, Answer<R> answer) {
    return answer.lead(key, row).map(Addresses::of).orElse(null);
  }

  private static Dot dot(String plot, String label, ProfileRow row, String address) {
    return new Dot(
        plot, label, row.effect(), row.low(), row.high(), row.unit(), row.tests(), address);
  }

  private static Dot dot(String plot, String label, Difference difference, String address) {
    return new Dot(
        plot,
        label,
        difference.difference(),
        difference.low(),
        difference.high(),
        difference.unit(),
        difference.directTests(),
        address);
  }

  /** What sets a model apart in its line. */
  private static String apart(String model, String line) {
    return line != null && model.startsWith(line + " ")
        ? model.substring(line.length() + 1)
        : model;
  }

  private static Chart chart(List<Dot> dots, int number, boolean small) {
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
    String unit = dots.get(0).unit();
    boolean bars = dots.stream().anyMatch(dot -> dot.low() != null);
    String title =
        (small || number == 0 ? (bars ? BAR : NO_BAR) + " " : "")
            + (small
                ? "Each plot has a scale of its own."
                : "In " + (unit.equals("%") ? "per cent of performance" : unit) + ".")
            + (drawn.size() < dots.size()
                ? " The first %d of %d are drawn.".formatted(drawn.size(), dots.size())
                : "");
    int height = ROW_HEIGHT * drawn.size() + AXIS;
    ObjectNode specification = Charts.specification("effects", title, height, values);
    if (drawn.stream().allMatch(dot -> dot.low() == null)) {
      withoutBars(specification);
    }
    if (small) {
      ((ObjectNode) specification.at("/layer/1/encoding/x/axis")).put("tickCount", 4);
    }
    return new Chart("chart-effects-" + number, title, height, specification);
  }

  /** A layer over no data has no extent; the dots then hold the axis. */
  private static void withoutBars(ObjectNode specification) {
    ArrayNode layers = (ArrayNode) specification.get("layer");
    ObjectNode bars = (ObjectNode) layers.remove(BARS);
    ObjectNode x = (ObjectNode) layers.get(BARS).at("/encoding/x");
    x.setAll((ObjectNode) ((ObjectNode) bars.at("/encoding/x")).without("field"));
    ArrayNode told = Charts.JSON.createArrayNode();
    for (JsonNode field : specification.at("/encoding/tooltip")) {
      if (!field.get("field").asText().matches("low|high")) {
        told.add(field);
      }
    }
    ((ObjectNode) specification.get("encoding")).set("tooltip", told);
  }
}
