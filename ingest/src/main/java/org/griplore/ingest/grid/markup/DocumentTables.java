package org.griplore.ingest.grid.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.store.vocabulary.Finding;

/**
 * Collects the tables of a text document and the paragraphs between them, which are the preamble of
 * the next. Paragraphs count their own rows, as on a page; a table inside a cell is a table of its
 * own behind the one that holds it. Where there are several tables, each is named by the heading
 * above it.
 */
final class DocumentTables {
  private final CellCount count;
  private final List<Grid> grids = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private List<GridCell> preamble = new ArrayList<>();
  private int paragraphs;
  private String heading = "";

  DocumentTables(String name) {
    this.count = new CellCount(name);
  }

  /** A table while it is read. */
  static final class Table {
    final List<List<GridCell>> rows = new ArrayList<>();
    final List<Grid.Merge> merges = new ArrayList<>();
    int row;
    int column = 1;
  }

  void paragraph(MarkedText text, boolean isHeading) {
    paragraphs++;
    if (!text.text().isEmpty()) {
      count.add(1);
      heading = isHeading ? text.line() : heading;
      preamble.add(GridCell.of(paragraphs, 1, text.line().replace('\n', ' ')));
    }
  }

  void cell(Table table, GridCell cell) {
    if (cell != null) {
      count.add(1);
      if (table.rows.isEmpty()
          || table.rows.get(table.rows.size() - 1).get(0).row() != cell.row()) {
        table.rows.add(new ArrayList<>());
      }
      table.rows.get(table.rows.size() - 1).add(cell);
    }
  }

  /** A table without cells is none. One that is a single column is text. */
  void table(Table table) {
    List<List<GridCell>> rows = table.rows;
    if (rows.stream().allMatch(row -> row.size() == 1 && row.get(0).column() == 1)) {
      for (List<GridCell> row : rows) {
        MarkedText text = new MarkedText();
        text.add(row.get(0).text(), false, false);
        paragraph(text, false);
      }
      return;
    }
    grids.add(new Grid(heading, preamble, rows, table.merges, false));
    preamble = new ArrayList<>();
  }

  void finding(Finding finding) {
    findings.add(finding);
  }

  /** Tables, or the paragraphs as lines where there are none. */
  Content content(String form) {
    if (grids.isEmpty()) {
      return new Content.Prose(
          preamble.stream()
              .map(cell -> new Content.Line(cell.row(), cell.text()))
              .collect(Collectors.toList()),
          findings);
    }
    if (grids.size() == 1) {
      grids.set(0, grids.get(0).named(""));
    }
    if (!preamble.isEmpty()) {
      grids.add(new Grid("after the tables", preamble, List.of(), List.of(), false));
    }
    return new Content.Tables(form, grids, findings);
  }
}
