package org.griplore.ingest.grid.source;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * What was read, as JSON for comparing with a case's {@code expected.json}: a row is {@code
 * "row|column:text|..."}, the row being that of its first cell, with the number or date behind a
 * text as {@code text=number} where the source has one, and behind it {@code ^mark}, {@code
 * struck}, {@code hidden}, {@code (comment)}.
 */
public final class GridView {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private GridView() {}

  public static ObjectNode of(Content content) {
    ObjectNode view = MAPPER.createObjectNode();
    if (content instanceof Content.Tables tables) {
      view.put("form", tables.form());
      ArrayNode grids = view.putArray("grids");
      tables.grids().forEach(grid -> grids.add(of(grid)));
    } else if (content instanceof Content.Prose prose) {
      ArrayNode lines = view.putArray("prose");
      prose.lines().forEach(line -> lines.add(line.number() + ":" + line.text()));
    }
    return view;
  }

  public static ObjectNode of(Refusal refusal) {
    ObjectNode view = MAPPER.createObjectNode();
    view.put("refusal", refusal.sentence());
    ArrayNode where = view.putArray("where");
    refusal.problems().stream().map(Problem::where).forEach(where::add);
    return view;
  }

  private static ObjectNode of(Grid grid) {
    ObjectNode view = MAPPER.createObjectNode();
    view.put("name", grid.name());
    if (!grid.preamble().isEmpty()) {
      ArrayNode preamble = view.putArray("preamble");
      grid.preamble().forEach(cell -> preamble.add(cell.row() + ":" + cell.text()));
    }
    ArrayNode rows = view.putArray("rows");
    grid.rows().forEach(row -> rows.add(row(row)));
    if (!grid.merges().isEmpty()) {
      ArrayNode merges = view.putArray("merges");
      grid.merges()
          .forEach(
              m ->
                  merges.add(
                      "%d,%d-%d,%d"
                          .formatted(m.firstRow(), m.firstColumn(), m.lastRow(), m.lastColumn())));
    }
    if (grid.hidden()) {
      view.put("hidden", true);
    }
    if (!grid.hiddenRows().isEmpty()) {
      ArrayNode hidden = view.putArray("hiddenRows");
      grid.hiddenRows().stream().sorted().forEach(hidden::add);
    }
    return view;
  }

  public static String row(List<GridCell> row) {
    StringBuilder text = new StringBuilder().append(row.get(0).row());
    for (GridCell cell : row) {
      text.append('|').append(cell.column()).append(':').append(cell.text());
      if (cell.number() != null) {
        text.append('=').append(cell.number());
      }
      if (cell.date() != null) {
        text.append('=').append(cell.date());
      }
      if (!cell.look().mark().isEmpty()) {
        text.append(" ^").append(cell.look().mark());
      }
      text.append(cell.look().struck() ? " struck" : "");
      text.append(cell.look().hidden() ? " hidden" : "");
      if (!cell.look().comment().isEmpty()) {
        text.append(" (").append(cell.look().comment()).append(')');
      }
    }
    return text.toString();
  }
}
