package org.griplore.ingest.grid.workbook;

import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.text.PlainXml;

/**
 * The styles of an OpenDocument file: of cells, texts and tables, and number formats, which are put
 * into the codes that workbooks use ({@code 0.0" m"}). OpenDocument 1.3 part 3, 16 and 20.
 */
final class OpenDocumentStyles {
  private static final int MOST_DIGITS = 30;

  private final CellStyles styles = new CellStyles();
  private final Map<String, String> formats = new HashMap<>();

  /** Takes an element if it begins a style; says whether it did. It is read to its end. */
  boolean take(XMLStreamReader xml) throws XMLStreamException {
    switch (xml.getLocalName()) {
      case "style" -> style(xml);
      case "number-style", "percentage-style", "currency-style", "date-style", "time-style" ->
          format(xml);
      default -> {
        return false;
      }
    }
    return true;
  }

  private void style(XMLStreamReader xml) throws XMLStreamException {
    String name = PlainXml.attribute(xml, "name");
    String parent = PlainXml.attribute(xml, "parent-style-name");
    String format = PlainXml.attribute(xml, "data-style-name");
    Boolean struck = null;
    Boolean raised = null;
    Boolean hides = null;
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      depth += step(event);
      if (event == XMLStreamConstants.START_ELEMENT) {
        String line = PlainXml.attribute(xml, "text-line-through-style");
        String type = PlainXml.attribute(xml, "text-line-through-type");
        struck = line == null ? type == null ? struck : isLine(type) : isLine(line);
        String position = PlainXml.attribute(xml, "text-position");
        raised = position == null ? raised : isRaised(position);
        String display = PlainXml.attribute(xml, "display");
        boolean table = xml.getLocalName().equals("table-properties");
        hides = table && display != null ? Boolean.valueOf(display.equals("false")) : hides;
      }
    }
    styles.put(name, new CellStyles.Style(parent, format, struck, raised, hides));
  }

  static int step(int event) {
    return event == XMLStreamConstants.START_ELEMENT
        ? 1
        : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
  }

  private static Boolean isLine(String kind) {
    return !kind.equals("none");
  }

  /** {@code super 58%}, or a height above the line in per cent. */
  private static Boolean isRaised(String position) {
    return position.startsWith("super") || position.matches("[1-9]\\d{0,3}%.*");
  }

  private void format(XMLStreamReader xml) throws XMLStreamException {
    String name = PlainXml.attribute(xml, "name");
    StringBuilder code = new StringBuilder();
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      depth += step(event);
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "number", "scientific-number" -> digits(xml, code);
          case "text", "currency-symbol" -> {
            literal(xml.getElementText(), code);
            depth--;
          }
          case "day", "day-of-week" -> code.append("d");
          case "month", "quarter" -> code.append("m");
          case "year", "era" -> code.append("yyyy");
          case "hours" -> code.append("h");
          case "minutes" -> code.append("mm");
          case "seconds" -> code.append("ss");
          default -> {}
        }
      }
    }
    if (name != null) {
      formats.put(name, code.toString());
    }
  }

  private static void digits(XMLStreamReader xml, StringBuilder code) {
    int decimals = Math.min(MOST_DIGITS, PlainXml.number(xml, "decimal-places", -1));
    boolean grouped = "true".equals(PlainXml.attribute(xml, "grouping"));
    code.append(grouped ? "#,##0" : "0");
    if (decimals > 0) {
      code.append('.').append("0".repeat(decimals));
    }
  }

  private static void literal(String text, StringBuilder code) {
    if (text.equals("%")) {
      code.append('%');
    } else if (!text.isEmpty()) {
      code.append('"').append(text.replace('"', '\'')).append('"');
    }
  }

  /** The look of a cell or text by the name of its style. */
  XlsxStyles.Look look(String name) {
    XlsxStyles.Look look = styles.look(name);
    String code = look.format() == null ? null : formats.get(look.format());
    return new XlsxStyles.Look(code, look.struck(), look.raised());
  }

  /** Whether a table's style hides it. */
  boolean hides(String table) {
    return styles.hides(table);
  }
}
