package org.griplore.ingest.grid.markup;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.packed.PackedFile;
import org.griplore.ingest.grid.text.PlainXml;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the tables of a text document (DOCX: ECMA-376 part 1, 17), the paragraphs between them as
 * their preamble. What was deleted with changes tracked is no part of it; comments stand at their
 * cells, footnotes behind the tables. Our own small reader over the parts; macros, pictures and
 * what stands elsewhere are left alone.
 */
public final class DocxReader {
  private static final int DEEPEST = 20;
  private static final String MAIN = "word/document.xml";

  private final PackedFile file;
  private final DocumentTables tables;
  private final Map<String, String> comments = new HashMap<>();
  private int footnotes;

  private DocxReader(PackedFile file) {
    this.file = file;
    this.tables = new DocumentTables(file.name());
  }

  /** How the letters of a run are shown. */
  private static final class Run {
    boolean raised;
    boolean struck;
    boolean hidden;
  }

  /**
   * Reads a packed file as a text document.
   *
   * @throws Refusal when it is damaged or nests tables deeper than 20
   */
  public static Content read(PackedFile file) {
    DocxReader reader = new DocxReader(file);
    try {
      reader.comments();
      try (InputStream in = file.open(MAIN)) {
        reader.body(PlainXml.open(in));
      }
      reader.footnotes();
      return reader.tables.content("text document");
    } catch (Refusal e) {
      throw e;
    } catch (IOException | XMLStreamException | RuntimeException e) {
      throw new Refusal(
          file.name() + " is a damaged or incomplete text document: save it anew and add it again.",
          e,
          new Problem(file.name(), "a damaged text document", "a whole DOCX file"));
    }
  }

  private void body(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "p" -> {
            boolean[] heading = new boolean[1];
            tables.paragraph(paragraph(xml, new MarkedText(), null, heading), heading[0]);
          }
          case "tbl" -> table(xml, 1);
          case "Fallback" -> skip(xml);
          default -> {}
        }
      }
    }
  }

  private void table(XMLStreamReader xml, int depth) throws XMLStreamException {
    if (depth > DEEPEST) {
      throw new Refusal(
          file.name() + " nests tables deeper than " + DEEPEST + ": it is not read.",
          new Problem(file.name(), "tables in tables", "tables side by side"));
    }
    DocumentTables.Table table = new DocumentTables.Table();
    Map<Integer, int[]> begun = new HashMap<>();
    while (!isEnd(xml, xml.next(), "tbl")) {
      if (xml.isStartElement()) {
        switch (xml.getLocalName()) {
          case "tr" -> {
            table.row++;
            table.column = 1;
          }
          case "gridBefore" -> table.column += PlainXml.number(xml, "val", 0);
          case "tc" -> cell(xml, table, begun, depth);
          default -> {}
        }
      }
    }
    begun.forEach((column, range) -> merge(table, range));
    tables.table(table);
  }

  private static void merge(DocumentTables.Table table, int[] range) {
    if (range[0] != range[2] || range[1] != range[3]) {
      table.merges.add(new Grid.Merge(range[0], range[1], range[2], range[3]));
    }
  }

  private void cell(
      XMLStreamReader xml, DocumentTables.Table table, Map<Integer, int[]> begun, int depth)
      throws XMLStreamException {
    MarkedText text = new MarkedText();
    StringBuilder comment = new StringBuilder();
    int wide = 1;
    boolean continued = false;
    boolean first = true;
    while (!isEnd(xml, xml.next(), "tc")) {
      if (xml.isStartElement()) {
        switch (xml.getLocalName()) {
          case "gridSpan" -> wide = Math.max(1, Math.min(1000, PlainXml.number(xml, "val", 1)));
          case "vMerge" -> continued = !"restart".equals(PlainXml.attribute(xml, "val"));
          case "p" -> {
            if (!first) {
              text.add("\n", false, false);
            }
            first = false;
            paragraph(xml, text, comment, new boolean[1]);
          }
          case "tbl" -> table(xml, depth + 1);
          case "Fallback", "tcPrChange" -> skip(xml);
          default -> {}
        }
      }
    }
    int column = table.column;
    if (continued && begun.containsKey(column)) {
      begun.get(column)[2] = table.row;
    } else {
      int[] before = begun.put(column, new int[] {table.row, column, table.row, column + wide - 1});
      if (before != null) {
        merge(table, before);
      }
    }
    GridCell cell = text.cell(table.row, column);
    if (cell != null && !comment.isEmpty()) {
      cell = cell.shown(cell.look().commented(comment.toString()));
    }
    tables.cell(table, cell);
    table.column += wide;
  }

  /** Reads the paragraph begun, to its end. */
  private MarkedText paragraph(
      XMLStreamReader xml, MarkedText text, StringBuilder comment, boolean[] heading)
      throws XMLStreamException {
    Run run = new Run();
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
        String val = PlainXml.attribute(xml, "val");
        switch (xml.getLocalName()) {
          case "pStyle" -> heading[0] = val != null && isHeading(val);
          case "r" -> run = new Run();
          case "strike", "dstrike" -> run.struck = PlainXml.isOn(val);
          case "vanish" -> run.hidden = PlainXml.isOn(val);
          case "vertAlign" -> run.raised = "superscript".equals(val);
          case "t" -> {
            String part = xml.getElementText();
            depth--;
            if (!run.hidden) {
              text.add(part, run.raised, run.struck);
            }
          }
          case "tab" -> text.add("\t", false, false);
          case "br", "cr" -> text.add("\n", false, false);
          case "noBreakHyphen" -> text.add("-", false, false);
          case "footnoteReference" -> text.add(Integer.toString(++footnotes), true, false);
          case "commentReference" -> {
            String said = comments.get(PlainXml.attribute(xml, "id"));
            if (comment != null && said != null) {
              comment.append(comment.isEmpty() ? "" : "; ").append(said);
            }
          }
          case "del", "moveFrom", "Fallback", "tabs", "rPrChange", "pPrChange" -> {
            skip(xml);
            depth--;
          }
          default -> {}
        }
      }
    }
    return text;
  }

  private static boolean isHeading(String style) {
    return style.matches(
        "(?i)(heading|berschrift|ueberschrift|titre|titolo|titel|title|caption).*");
  }

  private void comments() throws IOException, XMLStreamException {
    if (!file.has("word/comments.xml")) {
      return;
    }
    try (InputStream in = file.open("word/comments.xml")) {
      XMLStreamReader xml = PlainXml.open(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("comment")) {
          String id = PlainXml.attribute(xml, "id");
          String said = paragraph(xml, new MarkedText(), null, new boolean[1]).text();
          comments.put(id, said.replace('\n', ' '));
        }
      }
    }
  }

  /** Footnotes are numbered as they stand in the text; those of types are separators. */
  private void footnotes() throws IOException, XMLStreamException {
    if (footnotes == 0 || !file.has("word/footnotes.xml")) {
      return;
    }
    int number = 0;
    try (InputStream in = file.open("word/footnotes.xml")) {
      XMLStreamReader xml = PlainXml.open(in);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("footnote")
            && PlainXml.attribute(xml, "type") == null) {
          MarkedText text = new MarkedText();
          text.add("[" + ++number + "] ", false, false);
          tables.paragraph(paragraph(xml, text, null, new boolean[1]), false);
        }
      }
    }
  }

  private static boolean isEnd(XMLStreamReader xml, int event, String element) {
    return event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(element);
  }

  private static void skip(XMLStreamReader xml) throws XMLStreamException {
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      depth +=
          event == XMLStreamConstants.START_ELEMENT
              ? 1
              : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
    }
  }
}
