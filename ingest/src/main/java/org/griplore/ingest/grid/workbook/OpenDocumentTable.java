package org.griplore.ingest.grid.workbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.text.PlainXml;
import org.griplore.store.vocabulary.Finding;

/**
 * Reads one table of an OpenDocument file (OpenDocument 1.3 part 3, 9). Cells and rows that are
 * repeated are unfolded where they hold something.
 */
final class OpenDocumentTable {
  private static final int MOST_REPEATS = 1 << 20;

  private final String file;
  private final OpenDocumentStyles styles;
  private final OpenDocumentText texts;
  private final CellCount count;
  private SheetCells cells;
  private int row = 1;
  private int column;
  private int columns;

  OpenDocumentTable(
      String file, OpenDocumentStyles styles, OpenDocumentText texts, CellCount count) {
    this.file = file;
    this.styles = styles;
    this.texts = texts;
    this.count = count;
  }

  List<Finding> findings() {
    return cells.findings();
  }

  /** Reads the table begun, to its end. */
  Grid read(XMLStreamReader xml) throws XMLStreamException {
    String name = PlainXml.attribute(xml, "name");
    cells = new SheetCells(name == null ? "" : name, count);
    boolean hidden = styles.hides(PlainXml.attribute(xml, "style-name"));
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      depth += OpenDocumentStyles.step(event);
      if (event != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      if (OpenDocumentText.isAside(xml)) {
        OpenDocumentText.skip(xml);
        depth--;
        continue;
      }
      switch (xml.getLocalName()) {
        case "table-column" -> {
          int repeated = repeated(xml, "number-columns-repeated");
          if (isHidden(xml)) {
            cells.hideColumns(columns + 1, columns + repeated);
          }
          columns += repeated;
        }
        case "table-row" -> {
          row(xml);
          depth--;
        }
        default -> {}
      }
    }
    return cells.grid(hidden);
  }

  private static int repeated(XMLStreamReader xml, String attribute) {
    return Math.max(1, Math.min(MOST_REPEATS, PlainXml.number(xml, attribute, 1)));
  }

  private static boolean isHidden(XMLStreamReader xml) {
    String visibility = PlainXml.attribute(xml, "visibility");
    return visibility != null && !visibility.equals("visible");
  }

  private void row(XMLStreamReader xml) throws XMLStreamException {
    int repeated = repeated(xml, "number-rows-repeated");
    boolean hidden = isHidden(xml);
    List<GridCell> line = new ArrayList<>();
    column = 1;
    while (!(xml.next() == XMLStreamConstants.END_ELEMENT
        && xml.getLocalName().equals("table-row"))) {
      if (xml.isStartElement()) {
        if (xml.getLocalName().endsWith("table-cell")) {
          cell(xml, line);
        } else {
          OpenDocumentText.skip(xml);
        }
      }
    }
    for (int i = 0; i < repeated && !line.isEmpty(); i++) {
      int at = row + i;
      new CellReference(at, 1).inside("row " + at, file, "table");
      line.forEach(
          cell ->
              cells.add(
                  new GridCell(
                      at, cell.column(), cell.text(), cell.number(), cell.date(), cell.look())));
      if (hidden) {
        cells.hideRow(at);
      }
    }
    row += repeated;
  }

  private void cell(XMLStreamReader xml, List<GridCell> line) throws XMLStreamException {
    int repeated = repeated(xml, "number-columns-repeated");
    int wide = repeated(xml, "number-columns-spanned");
    int high = repeated(xml, "number-rows-spanned");
    boolean covered = xml.getLocalName().equals("covered-table-cell");
    XlsxStyles.Look look = styles.look(PlainXml.attribute(xml, "style-name"));
    Stored stored = new Stored(xml);
    read(xml, stored);
    if (wide > 1 || high > 1) {
      cells.merge(new Grid.Merge(row, column, row + high - 1, column + wide - 1));
    }
    GridCell cell = stored.cell(row, column, look.format());
    if (cell == null && stored.formula != null && stored.type == null) {
      cells.withoutValue(GridCell.of(row, column, stored.formula));
    } else if (cell == null && !stored.comment.isEmpty()) {
      cells.comment(new CellReference(row, column), stored.comment);
    } else if (cell != null) {
      new CellReference(row, column + repeated - 1).inside("column " + column, file, "table");
      GridCell shown = look.struck() ? cell.shown(cell.look().strikingOut()) : cell;
      shown = covered ? shown.shown(shown.look().hiding()) : shown;
      count.add(repeated);
      for (int i = 0; i < repeated; i++) {
        line.add(shown.in(column + i));
      }
    }
    column += repeated;
  }

  private void read(XMLStreamReader xml, Stored stored) throws XMLStreamException {
    int depth = 1;
    int comments = 0;
    while (depth > 0) {
      int event = xml.next();
      depth += OpenDocumentStyles.step(event);
      if (event == XMLStreamConstants.END_ELEMENT) {
        comments -= xml.getLocalName().equals("annotation") ? 1 : 0;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        if (xml.getLocalName().equals("annotation")) {
          comments++;
        } else if (OpenDocumentText.isAside(xml)) {
          OpenDocumentText.skip(xml);
          depth--;
        } else if (xml.getLocalName().equals("p") || xml.getLocalName().equals("h")) {
          MarkedText text = comments > 0 ? new MarkedText() : stored.paragraph();
          texts.paragraph(xml, text);
          depth--;
          if (comments > 0) {
            String said = XlsxComments.oneLine(text.text());
            stored.comment += (stored.comment.isEmpty() || said.isEmpty() ? "" : " ") + said;
          }
        }
      }
    }
  }

  /** What a cell's element says of it. */
  private static final class Stored {
    final String type;
    final String value;
    final String formula;
    final MarkedText text = new MarkedText();
    String comment = "";
    private boolean begun;

    Stored(XMLStreamReader xml) {
      type = PlainXml.attribute(xml, "value-type");
      formula = PlainXml.attribute(xml, "formula");
      String kept = null;
      for (String each : new String[] {"value", "date-value", "time-value", "boolean-value"}) {
        kept = kept == null ? PlainXml.attribute(xml, each) : kept;
      }
      value = kept;
    }

    MarkedText paragraph() {
      if (begun) {
        text.add("\n", false, false);
      }
      begun = true;
      return text;
    }

    /** The cell; null where it is empty. */
    GridCell cell(int row, int column, String format) {
      GridCell read = valued(row, column, format);
      if (read == null || comment.isEmpty()) {
        return read;
      }
      return read.shown(read.look().commented(comment));
    }

    private GridCell valued(int row, int column, String format) {
      if (type == null || value == null) {
        return text.cell(row, column);
      }
      return switch (type) {
        case "float", "currency", "percentage" -> number(row, column, format);
        case "date" -> Iso.date(GridCell.of(row, column, value));
        case "time" -> {
          BigDecimal part = Iso.partOfDay(value);
          yield part == null
              ? text.cell(row, column)
              : CellFormat.cell(row, column, part, "h:mm:ss", false);
        }
        case "boolean" -> GridCell.of(row, column, value);
        default -> text.cell(row, column);
      };
    }

    private GridCell number(int row, int column, String format) {
      BigDecimal number;
      try {
        number = new BigDecimal(value.strip());
      } catch (NumberFormatException e) {
        return text.cell(row, column);
      }
      String code = format == null && type.equals("percentage") ? "0%" : format;
      boolean temporal = code != null && !code.contains("0");
      return CellFormat.isMeasurable(number)
          ? CellFormat.cell(row, column, number, temporal ? null : code, false)
          : text.cell(row, column);
    }
  }
}
