package org.griplore.ingest.grid.workbook;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.CellLook;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.text.PlainXml;

/**
 * Texts of a workbook that may be put together from runs, each with a font of its own (ECMA-376
 * part 1, 18.4); readings aloud (phonetic runs) are left out.
 */
final class XlsxTexts {
  private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private XlsxTexts() {}

  /** A text and how it is shown. */
  record Text(String text, CellLook look) {}

  /** All shared texts, in the order that cells refer to. */
  static List<Text> shared(String name, InputStream in) throws XMLStreamException {
    List<Text> texts = new ArrayList<>();
    CellCount count = new CellCount(name);
    XMLStreamReader xml = PlainXml.open(in);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("si")) {
        texts.add(text(xml, "si"));
        count.add(1);
      }
    }
    return texts;
  }

  /** Reads on to the end of the element that holds a text. */
  static Text text(XMLStreamReader xml, String element) throws XMLStreamException {
    MarkedText text = new MarkedText();
    boolean raised = false;
    boolean struck = false;
    int aloud = 0;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        if (xml.getLocalName().equals(element)) {
          break;
        }
        aloud -= xml.getLocalName().equals("rPh") ? 1 : 0;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "r" -> {
            raised = false;
            struck = false;
          }
          case "rPh" -> aloud++;
          case "t" -> {
            String part = unescaped(xml.getElementText());
            if (aloud == 0) {
              text.add(part, raised, struck);
            }
          }
          default -> {
            raised |= XlsxStyles.isRaised(xml);
            struck |= XlsxStyles.isStruck(xml);
          }
        }
      }
    }
    return new Text(text.text(), text.look());
  }

  /** {@code _x000D_} is the character 13 (18.18.102, ST_Xstring). */
  static String unescaped(String text) {
    if (!text.contains("_x")) {
      return text;
    }
    return ESCAPE
        .matcher(text)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    Character.toString((char) Integer.parseInt(found.group(1), 16))));
  }
}
