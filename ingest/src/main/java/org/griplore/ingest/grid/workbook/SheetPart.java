package org.griplore.ingest.grid.workbook;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.Grid;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A sheet's XML, looked through before the library reads it: merged ranges, which the library
 * leaves out, and cells that it would leave out, take for damage or make room for without limit.
 * External entities are not resolved.
 */
final class SheetPart {
  /** The size of a sheet, XFD1048576. */
  private static final int MOST_ROWS = 1 << 20;

  private static final int MOST_COLUMNS = 1 << 14;
  private static final Pattern REFERENCE =
      Pattern.compile("\\$?([A-Za-z]{1,3})\\$?([1-9]\\d{0,6})");

  private static final XMLInputFactory XML = xml();

  private final String name;
  private final String part;
  private final List<Grid.Merge> merges = new ArrayList<>();
  private int lastText = -1;
  private boolean isText;

  private SheetPart(String name, String part) {
    this.name = name;
    this.part = part;
  }

  /** A reader of XML that knows no document types and no entities from elsewhere. */
  static XMLInputFactory xml() {
    XMLInputFactory xml = XMLInputFactory.newFactory();
    xml.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    xml.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return xml;
  }

  /**
   * Looks through a sheet.
   *
   * @throws Refusal when a cell stands outside of any sheet, or holds a date of the strict form
   */
  static SheetPart of(String name, String part, InputStream in) throws XMLStreamException {
    SheetPart sheet = new SheetPart(name, part);
    XMLStreamReader xml = XML.createXMLStreamReader(in);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        sheet.element(xml);
      }
    }
    return sheet;
  }

  /** How many texts a workbook's table of shared texts holds. */
  static int sharedTexts(InputStream in) throws XMLStreamException {
    XMLStreamReader xml = XML.createXMLStreamReader(in);
    int texts = 0;
    while (xml.hasNext()) {
      boolean text =
          xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("si");
      texts += text ? 1 : 0;
    }
    return texts;
  }

  /** The merged ranges. */
  List<Grid.Merge> merges() {
    return merges;
  }

  /** The last of the workbook's shared texts that a cell shows, from 0; -1 for none. */
  int lastText() {
    return lastText;
  }

  private void element(XMLStreamReader xml) throws XMLStreamException {
    String reference;
    switch (xml.getLocalName()) {
      case "row" -> {
        reference = xml.getAttributeValue(null, "r");
        if (reference != null) {
          position("A" + reference);
        }
      }
      case "c" -> {
        reference = xml.getAttributeValue(null, "r");
        if (reference != null) {
          position(reference);
        }
        String type = xml.getAttributeValue(null, "t");
        if ("d".equals(type)) {
          throw strictDate(reference);
        }
        isText = "s".equals(type);
      }
      case "v" -> {
        if (isText) {
          String text = xml.getElementText().strip();
          lastText = Math.max(lastText, text.isEmpty() ? -1 : Integer.parseInt(text));
        }
      }
      case "mergeCell" -> {
        String[] ends = xml.getAttributeValue(null, "ref").split(":");
        int[] first = position(ends[0]);
        int[] last = position(ends[ends.length - 1]);
        merges.add(new Grid.Merge(first[0], first[1], last[0], last[1]));
      }
      default -> {}
    }
  }

  /** {@code C7} is row 7, column 3. */
  private int[] position(String reference) {
    Matcher parts = REFERENCE.matcher(reference);
    if (!parts.matches()) {
      throw outside(reference);
    }
    String letters = parts.group(1);
    int column = 0;
    for (int i = 0; i < letters.length(); i++) {
      column = 26 * column + Character.toUpperCase(letters.charAt(i)) - 'A' + 1;
    }
    int row = Integer.parseInt(parts.group(2));
    if (row > MOST_ROWS || column > MOST_COLUMNS) {
      throw outside(reference);
    }
    return new int[] {row, column};
  }

  private Refusal outside(String reference) {
    return new Refusal(
        "%s is a damaged or incomplete workbook: its %s names the cell %s, which no sheet has; save it anew and add it again."
            .formatted(name, part, shortened(reference)),
        new Problem(name + ", " + part, shortened(reference), "a cell from A1 to XFD1048576"));
  }

  private Refusal strictDate(String reference) {
    String cell = reference == null ? "a cell" : "cell " + reference;
    return new Refusal(
        "%s is a workbook of the strict form, whose dates (%s of %s) are not read: save it as a plain XLSX workbook."
            .formatted(name, cell, part),
        new Problem(name + ", " + part, cell + " of type d", "a date kept as a number"));
  }

  private static String shortened(String reference) {
    return reference.length() > 20 ? reference.substring(0, 20) + "\u2026" : reference;
  }
}
