package org.griplore.ingest.grid.workbook;

import java.io.InputStream;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.CellLook;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.VisibleText;
import org.griplore.ingest.grid.text.PlainXml;

/** Reads the cells of one sheet of a packed workbook, event by event (ECMA-376 part 1, 18.3). */
final class XlsxSheet {
  private final String name;
  private final String part;
  private final List<XlsxTexts.Text> texts;
  private final XlsxStyles styles;
  private final boolean from1904;
  private final SheetCells cells;
  private int row;
  private int column;

  /**
   * A reader of one sheet.
   *
   * @param name the workbook's name, for refusals
   * @param part the sheet's part, for refusals
   * @param texts the workbook's shared texts
   * @param cells takes what the sheet holds
   */
  XlsxSheet(
      String name,
      String part,
      List<XlsxTexts.Text> texts,
      XlsxStyles styles,
      boolean from1904,
      SheetCells cells) {
    this.name = name;
    this.part = part;
    this.texts = texts;
    this.styles = styles;
    this.from1904 = from1904;
    this.cells = cells;
  }

  /** What a cell's element holds. */
  private static final class Stored {
    String value;
    String formula;
    XlsxTexts.Text inline;
  }

  void read(InputStream in) throws XMLStreamException {
    XMLStreamReader xml = PlainXml.open(in);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        element(xml);
      }
    }
  }

  private void element(XMLStreamReader xml) throws XMLStreamException {
    switch (xml.getLocalName()) {
      case "col" -> {
        if (isHidden(xml, "width")) {
          cells.hideColumns(PlainXml.number(xml, "min", 1), PlainXml.number(xml, "max", 0));
        }
      }
      case "row" -> {
        String number = PlainXml.attribute(xml, "r");
        row = number == null ? row + 1 : CellReference.of("A" + number, name, part).row();
        column = 0;
        if (isHidden(xml, "ht")) {
          cells.hideRow(row);
        }
      }
      case "c" -> cell(xml);
      case "mergeCell" -> merge(PlainXml.attribute(xml, "ref"));
      default -> {}
    }
  }

  private static boolean isHidden(XMLStreamReader xml, String size) {
    String hidden = PlainXml.attribute(xml, "hidden");
    return hidden != null && PlainXml.isOn(hidden) || "0".equals(PlainXml.attribute(xml, size));
  }

  private void merge(String range) {
    if (range == null) {
      throw Damage.of(name, part, "holds a merged range without a place", "", "a range like A1:B2");
    }
    String[] ends = range.split(":", -1);
    CellReference first = CellReference.of(ends[0], name, part);
    CellReference last = CellReference.of(ends[ends.length - 1], name, part);
    cells.merge(new Grid.Merge(first.row(), first.column(), last.row(), last.column()));
  }

  private void cell(XMLStreamReader xml) throws XMLStreamException {
    String reference = PlainXml.attribute(xml, "r");
    String type = PlainXml.attribute(xml, "t");
    XlsxStyles.Look look = styles.look(PlainXml.number(xml, "s", -1));
    CellReference at =
        reference == null
            ? new CellReference(row, column + 1).inside("column " + (column + 1), name, part)
            : CellReference.of(reference, name, part);
    column = at.column();
    Stored stored = stored(xml);
    if (stored.inline != null && (stored.value == null || "inlineStr".equals(type))) {
      text(at, stored.inline, look);
    } else if (stored.value != null) {
      value(at, type == null ? "n" : type, stored.value, look);
    } else if (stored.formula != null) {
      cells.withoutValue(GridCell.of(at.row(), at.column(), stored.formula));
    }
  }

  private static Stored stored(XMLStreamReader xml) throws XMLStreamException {
    Stored stored = new Stored();
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "v" -> stored.value = xml.getElementText();
          case "f" -> stored.formula = "=" + xml.getElementText().strip();
          case "is" -> stored.inline = XlsxTexts.text(xml, "is");
          default -> {}
        }
      }
    }
    return stored;
  }

  private void value(CellReference at, String type, String value, XlsxStyles.Look look) {
    String bare = value.strip();
    switch (type) {
      case "s" -> {
        if (!bare.isEmpty()) {
          text(at, shared(bare), look);
        }
      }
      case "b" -> plain(at, bare.isEmpty() ? "" : bare.equals("1") ? "true" : "false", look);
      case "d" -> date(at, bare, look);
      case "n" -> {
        if (!bare.isEmpty()) {
          number(at, bare, look);
        }
      }
      default -> plain(at, XlsxTexts.unescaped(value), look);
    }
  }

  private XlsxTexts.Text shared(String index) {
    int number;
    try {
      number = Integer.parseInt(index);
    } catch (NumberFormatException e) {
      throw Damage.of(name, e);
    }
    if (number < 0 || number >= texts.size()) {
      throw Damage.of(
          name,
          part,
          "shows the text %d, but the workbook holds %d".formatted(number + 1, texts.size()),
          "a text that is missing",
          "a whole workbook");
    }
    return texts.get(number);
  }

  private void number(CellReference at, String value, XlsxStyles.Look look) {
    BigDecimal number;
    try {
      number = new BigDecimal(value);
    } catch (NumberFormatException e) {
      throw Damage.of(name, e);
    }
    if (!CellFormat.isMeasurable(number)) {
      plain(at, value, look);
      return;
    }
    GridCell cell = CellFormat.cell(at.row(), at.column(), number, look.format(), from1904);
    cells.add(look.struck() ? cell.shown(cell.look().strikingOut()) : cell);
  }

  private void date(CellReference at, String value, XlsxStyles.Look look) {
    try {
      LocalDate date = LocalDate.parse(value.length() > 10 ? value.substring(0, 10) : value);
      GridCell cell = new GridCell(at.row(), at.column(), date.toString(), null, date);
      cells.add(look.struck() ? cell.shown(cell.look().strikingOut()) : cell);
    } catch (DateTimeException e) {
      plain(at, value, look);
    }
  }

  private void plain(CellReference at, String text, XlsxStyles.Look look) {
    text(at, new XlsxTexts.Text(VisibleText.of(text), CellLook.PLAIN), look);
  }

  /** A text whose font is raised as a whole is no mark: there is nothing beside it. */
  private void text(CellReference at, XlsxTexts.Text text, XlsxStyles.Look look) {
    if (!text.text().isEmpty()) {
      CellLook shown = look.struck() ? text.look().strikingOut() : text.look();
      cells.add(new GridCell(at.row(), at.column(), text.text(), null, null, shown));
    }
  }
}
