package org.griplore.ui.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.log.LogQuestion;
import org.griplore.query.log.LogReduced;
import org.griplore.query.log.LogRow;
import org.griplore.query.log.LogRun;
import org.griplore.ui.web.link.Symbols;

/** Draws the runs of a log over the order of the day, with the reference's trace. */
public final class TraceCharts {
  private static final int HEIGHT = 300;

  private TraceCharts() {}

  public static List<Chart> of(Answer<LogRow> answer) {
    List<LogRow> rows = answer.rows();
    return answer.whole(LogQuestion.REDUCTIONS).orElseThrow().stream()
        .map(reduced -> chart(reduced, rows))
        .toList();
  }

  /** The element's id, so that each log finds its own plot. */
  public static String id(LogReduced reduced) {
    return "trace-" + reduced.discipline() + "-" + reduced.file().replaceAll("[^A-Za-z0-9]", "-");
  }

  private static Chart chart(LogReduced reduced, List<LogRow> rows) {
    ArrayNode values = Charts.JSON.createArrayNode();
    rows.stream()
        .filter(row -> row.discipline().equals(reduced.discipline()))
        .filter(row -> row.file().equals(reduced.file()) && row.mean() != null)
        .forEach(row -> add(values, row));
    String title =
        "Each run (small) and the mean of its set (large) over the order of the day; diamonds: the"
            + " reference, with its line between; dots: candidates; crosses: runs that do not"
            + " count. "
            + (reduced.level() == null
                ? ""
                : "Dashed: the level that results stand on, " + reduced.levelMeans() + ". ")
            + "Reference: "
            + Symbols.set(reduced.traceSaid())
            + ".";
    ObjectNode specification = Charts.specification("trace", title, HEIGHT, values);
    ((ObjectNode) specification.at("/encoding/y"))
        .put("title", reduced.measure() + unit(reduced.unit()));
    if (reduced.level() != null) {
      ((ObjectNode) specification.at("/layer/0/encoding/y")).put("datum", reduced.level());
    } else {
      ((ArrayNode) specification.get("layer")).remove(0);
    }
    return new Chart(id(reduced), title, HEIGHT, specification);
  }

  private static String unit(String symbol) {
    return symbol.isEmpty() ? "" : ", " + Symbols.set(symbol);
  }

  private static void add(ArrayNode values, LogRow row) {
    for (LogRun run : row.runs()) {
      if (run.figure() != null) {
        dot(values, row, run.figure(), Boolean.TRUE.equals(run.counts()) ? "run" : "left out")
            .put("run", run.run().run())
            .put("said", run.said());
      }
    }
    dot(values, row, row.mean(), "mean").put("said", row.standing());
  }

  private static ObjectNode dot(ArrayNode values, LogRow row, double figure, String what) {
    return values
        .addObject()
        .put("what", what)
        .put("role", row.role())
        .put("tyre", row.tyre())
        .put("sequence", row.sequence())
        .put("figure", figure);
  }
}
