package org.griplore.ingest.grid.workbook;

import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.text.PlainXml;

/** Texts of an OpenDocument file: paragraphs and what stands in them. */
final class OpenDocumentText {
  private static final int MOST_BLANKS = 1000;
  private static final String DRAWING = "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0";

  private final OpenDocumentStyles styles;

  OpenDocumentText(OpenDocumentStyles styles) {
    this.styles = styles;
  }

  /** Reads the paragraph begun, to its end, behind what stands in the text already. */
  void paragraph(XMLStreamReader xml, MarkedText text) throws XMLStreamException {
    Deque<XlsxStyles.Look> looks = new ArrayDeque<>();
    looks.push(XlsxStyles.Look.PLAIN);
    while (!looks.isEmpty()) {
      int event = xml.next();
      if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
        add(text, xml.getText(), looks.peek());
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        looks.pop();
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        if (isAside(xml)) {
          skip(xml);
          continue;
        }
        XlsxStyles.Look outer = looks.peek();
        switch (xml.getLocalName()) {
          case "s" ->
              add(text, " ".repeat(Math.min(MOST_BLANKS, PlainXml.number(xml, "c", 1))), outer);
          case "tab" -> add(text, "\t", outer);
          case "line-break" -> add(text, "\n", outer);
          default -> {}
        }
        XlsxStyles.Look own = styles.look(PlainXml.attribute(xml, "style-name"));
        boolean span = xml.getLocalName().equals("span");
        looks.push(
            span
                ? new XlsxStyles.Look(
                    null, outer.struck() || own.struck(), outer.raised() || own.raised())
                : outer);
      }
    }
  }

  private static void add(MarkedText text, String part, XlsxStyles.Look look) {
    text.add(part, look.raised(), look.struck());
  }

  /** Drawings, comments and the like stand in a text, but are none of it. */
  static boolean isAside(XMLStreamReader xml) {
    return DRAWING.equals(xml.getNamespaceURI())
        || switch (xml.getLocalName()) {
          case "annotation", "annotation-end", "note-body", "tracked-changes", "forms", "shapes" ->
              true;
          default -> false;
        };
  }

  /** Reads on to the end of the element begun. */
  static void skip(XMLStreamReader xml) throws XMLStreamException {
    int depth = 1;
    while (depth > 0) {
      depth += OpenDocumentStyles.step(xml.next());
    }
  }
}
