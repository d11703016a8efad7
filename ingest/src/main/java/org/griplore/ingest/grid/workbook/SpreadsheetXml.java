package org.griplore.ingest.grid.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.text.PlainXml;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the sheets of a workbook written as one XML text (SpreadsheetML of Excel 2002 and 2003, as
 * many programs still write it and call it XLS).
 */
public final class SpreadsheetXml {
  private static final long MOST_BYTES = 256L << 20;

  /** Formats by name, in codes. */
  private static final Map<String, String> NAMED =
      Map.of(
          "percent", "0.00%",
          "fixed", "0.00",
          "standard", "#,##0.00",
          "scientific", "0.00E+00",
          "general date", "m/d/yyyy h:mm",
          "short date", "m/d/yyyy",
          "medium date", "d-mmm-yy",
          "long date", "d mmmm yyyy",
          "long time", "h:mm:ss",
          "short time", "h:mm");

  private final String name;
  private final CellCount count;
  private final CellStyles styles = new CellStyles();
  private final List<Sheet> sheets = new ArrayList<>();
  private SheetCells cells;
  private int row;
  private int column;
  private int columns;

  private record Sheet(String name, SheetCells cells, boolean[] hidden) {}

  private SpreadsheetXml(String name) {
    this.name = name;
    this.count = new CellCount(name);
  }

  /**
   * Reads a source as such a workbook.
   *
   * @throws Refusal when it is damaged or too large
   */
  public static Content read(Original original) throws IOException {
    SpreadsheetXml workbook = new SpreadsheetXml(original.name());
    if (original.bytes() > MOST_BYTES) {
      throw new CellCount(original.name()).tooMany();
    }
    try (InputStream in = original.content().open()) {
      XMLStreamReader xml = PlainXml.open(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT) {
          workbook.element(xml);
        }
      }
      return workbook.tables();
    } catch (Refusal e) {
      throw e;
    } catch (XMLStreamException | RuntimeException e) {
      throw Damage.of(original.name(), e);
    }
  }

  private Content tables() {
    List<Grid> grids = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Grid grid = sheet.cells().grid(sheet.hidden()[0]);
      grid = grid.from(grid.name());
      grids.add(sheets.size() == 1 ? grid.named("") : grid);
      findings.addAll(sheet.cells().findings());
    }
    return new Content.Tables("workbook", grids, findings);
  }

  private void element(XMLStreamReader xml) throws XMLStreamException {
    switch (xml.getLocalName()) {
      case "Style" -> style(xml);
      case "Worksheet" -> {
        String title = PlainXml.attribute(xml, "Name");
        cells = new SheetCells(title == null ? "" : title, count);
        sheets.add(new Sheet(title, cells, new boolean[1]));
        row = 0;
        columns = 0;
      }
      case "Visible" -> {
        if (!sheets.isEmpty()) {
          String visible = xml.getElementText().strip();
          sheets.get(sheets.size() - 1).hidden()[0] = !visible.equals("SheetVisible");
        }
      }
      case "Column" -> {
        int first = PlainXml.number(xml, "Index", columns + 1);
        columns = first + PlainXml.number(xml, "Span", 0);
        if (isHidden(xml)) {
          cells().hideColumns(first, columns);
        }
      }
      case "Row" -> {
        row = PlainXml.number(xml, "Index", row + 1);
        place(row, 1);
        column = 0;
        if (isHidden(xml)) {
          cells().hideRow(row);
        }
      }
      case "Cell" -> cell(xml);
      default -> {}
    }
  }

  private SheetCells cells() {
    if (cells == null) {
      throw Damage.of(name, null);
    }
    return cells;
  }

  private static boolean isHidden(XMLStreamReader xml) {
    return "1".equals(PlainXml.attribute(xml, "Hidden"));
  }

  private void place(int atRow, int atColumn) {
    String shown = "row " + atRow + ", column " + atColumn;
    new CellReference(atRow, atColumn).inside(shown, name, "table");
  }

  private void style(XMLStreamReader xml) throws XMLStreamException {
    String id = PlainXml.attribute(xml, "ID");
    String parent = PlainXml.attribute(xml, "Parent");
    String format = null;
    Boolean struck = null;
    Boolean raised = null;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("Style")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("Font")) {
        struck = "1".equals(PlainXml.attribute(xml, "StrikeThrough"));
        raised = "Superscript".equals(PlainXml.attribute(xml, "VerticalAlign"));
      } else if (event == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("NumberFormat")) {
        String code = PlainXml.attribute(xml, "Format");
        format = code == null ? null : NAMED.getOrDefault(code.toLowerCase(Locale.ROOT), code);
      }
    }
    styles.put(id, new CellStyles.Style(parent, format, struck, raised, null));
  }

  private void cell(XMLStreamReader xml) throws XMLStreamException {
    column = PlainXml.number(xml, "Index", column + 1);
    place(row, column);
    int across = PlainXml.number(xml, "MergeAcross", 0);
    int down = PlainXml.number(xml, "MergeDown", 0);
    if (across > 0 || down > 0) {
      cells().merge(new Grid.Merge(row, column, row + down, column + across));
    }
    XlsxStyles.Look look = styles.look(PlainXml.attribute(xml, "StyleID"));
    String formula = PlainXml.attribute(xml, "Formula");
    boolean comment = false;
    boolean valued = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("Cell")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        comment |= xml.getLocalName().equals("Comment");
        if (xml.getLocalName().equals("Data")) {
          String type = PlainXml.attribute(xml, "Type");
          MarkedText text = text(xml);
          if (comment) {
            String said = XlsxComments.oneLine(text.text());
            if (!said.isEmpty()) {
              cells().comment(new CellReference(row, column), said);
            }
          } else {
            valued = true;
            data(type == null ? "String" : type, text, look);
          }
        }
      }
    }
    if (!valued && formula != null) {
      cells().withoutValue(GridCell.of(row, column, formula));
    }
    column += across;
  }

  private void data(String type, MarkedText text, XlsxStyles.Look look) {
    GridCell read = text.cell(row, column);
    if (read == null) {
      return;
    }
    GridCell cell =
        switch (type) {
          case "Number" -> number(read, look.format());
          case "DateTime" -> Iso.date(read);
          case "Boolean" -> GridCell.of(row, column, read.text().equals("1") ? "true" : "false");
          default -> read;
        };
    cells().add(look.struck() ? cell.shown(cell.look().strikingOut()) : cell);
  }

  private GridCell number(GridCell read, String format) {
    try {
      BigDecimal number = new BigDecimal(read.text());
      return CellFormat.isMeasurable(number)
          ? CellFormat.cell(row, column, number, format, false)
          : read;
    } catch (NumberFormatException e) {
      throw Damage.of(name, e);
    }
  }

  /** The text of the element begun, with the marks of HTML that it may hold. */
  private static MarkedText text(XMLStreamReader xml) throws XMLStreamException {
    MarkedText text = new MarkedText();
    int depth = 1;
    int raised = 0;
    int struck = 0;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
        text.add(xml.getText(), raised > 0, struck > 0);
      } else if (event == XMLStreamConstants.START_ELEMENT
          || event == XMLStreamConstants.END_ELEMENT) {
        int step = event == XMLStreamConstants.START_ELEMENT ? 1 : -1;
        depth += step;
        raised += xml.getLocalName().equalsIgnoreCase("sup") ? step : 0;
        struck += xml.getLocalName().equalsIgnoreCase("s") ? step : 0;
      }
    }
    return text;
  }
}
