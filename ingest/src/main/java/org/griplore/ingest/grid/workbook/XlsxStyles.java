package org.griplore.ingest.grid.workbook;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.text.PlainXml;

/**
 * The looks that cells of a workbook refer to by number: number format, struck out, raised
 * (ECMA-376 part 1, 18.8).
 */
final class XlsxStyles {
  /** Formats that a workbook need not write down (18.8.30; those of East Asian dates shortened). */
  private static final Map<Integer, String> BUILT_IN = builtIn();

  private final Map<Integer, String> codes = new HashMap<>(BUILT_IN);
  private final List<Font> fonts = new ArrayList<>();
  private final List<int[]> cells = new ArrayList<>();

  private record Font(boolean struck, boolean raised) {}

  /**
   * How a cell looks.
   *
   * @param format the number format's code; null for a general one
   */
  record Look(String format, boolean struck, boolean raised) {
    static final Look PLAIN = new Look(null, false, false);
  }

  static XlsxStyles none() {
    return new XlsxStyles();
  }

  static XlsxStyles read(InputStream in) throws XMLStreamException {
    XlsxStyles styles = new XlsxStyles();
    XMLStreamReader xml = PlainXml.open(in);
    boolean cellFormats = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("cellXfs")) {
        cellFormats = false;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        cellFormats |= xml.getLocalName().equals("cellXfs");
        styles.element(xml, cellFormats);
      }
    }
    return styles;
  }

  private void element(XMLStreamReader xml, boolean cellFormats) throws XMLStreamException {
    switch (xml.getLocalName()) {
      case "numFmt" -> {
        String code = PlainXml.attribute(xml, "formatCode");
        int id = PlainXml.number(xml, "numFmtId", -1);
        if (code != null && id >= 0) {
          codes.put(id, code);
        }
      }
      case "font" -> fonts.add(font(xml));
      case "xf" -> {
        if (cellFormats) {
          cells.add(
              new int[] {PlainXml.number(xml, "numFmtId", 0), PlainXml.number(xml, "fontId", 0)});
        }
      }
      default -> {}
    }
  }

  private static Font font(XMLStreamReader xml) throws XMLStreamException {
    boolean struck = false;
    boolean raised = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("font")) {
        break;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        struck |= isStruck(xml);
        raised |= isRaised(xml);
      }
    }
    return new Font(struck, raised);
  }

  /** Whether an element of a font or a run strikes out. */
  static boolean isStruck(XMLStreamReader xml) {
    return xml.getLocalName().equals("strike") && PlainXml.isOn(PlainXml.attribute(xml, "val"));
  }

  /** Whether an element of a font or a run raises. */
  static boolean isRaised(XMLStreamReader xml) {
    return xml.getLocalName().equals("vertAlign")
        && "superscript".equals(PlainXml.attribute(xml, "val"));
  }

  /** The look of a cell by its number; plain where there is none. */
  Look look(int index) {
    if (index < 0 || index >= cells.size()) {
      return Look.PLAIN;
    }
    int[] cell = cells.get(index);
    Font font = cell[1] < fonts.size() ? fonts.get(cell[1]) : new Font(false, false);
    return new Look(codes.get(cell[0]), font.struck(), font.raised());
  }

  private static Map<Integer, String> builtIn() {
    Map<Integer, String> codes = new HashMap<>();
    String[] known = {
      "1=0",
      "2=0.00",
      "3=#,##0",
      "4=#,##0.00",
      "5=$#,##0",
      "6=$#,##0",
      "7=$#,##0.00",
      "8=$#,##0.00",
      "9=0%",
      "10=0.00%",
      "11=0.00E+00",
      "12=# ?/?",
      "13=# ??/??",
      "14=m/d/yy",
      "15=d-mmm-yy",
      "16=d-mmm",
      "17=mmm-yy",
      "18=h:mm AM/PM",
      "19=h:mm:ss AM/PM",
      "20=h:mm",
      "21=h:mm:ss",
      "22=m/d/yy h:mm",
      "37=#,##0",
      "38=#,##0",
      "39=#,##0.00",
      "40=#,##0.00",
      "41=#,##0",
      "42=$#,##0",
      "43=#,##0.00",
      "44=$#,##0.00",
      "45=mm:ss",
      "46=[h]:mm:ss",
      "47=mm:ss.0",
      "48=##0.0E+0",
      "49=@"
    };
    for (String each : known) {
      int equals = each.indexOf('=');
      codes.put(Integer.parseInt(each.substring(0, equals)), each.substring(equals + 1));
    }
    for (int id : new int[] {27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 57, 58}) {
      codes.put(id, "yyyy-mm-dd");
    }
    for (int id : new int[] {32, 33, 34, 35, 55, 56}) {
      codes.put(id, "h:mm:ss");
    }
    return codes;
  }
}
