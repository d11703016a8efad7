package org.griplore.ingest.grid.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.packed.PackedFile;
import org.griplore.ingest.grid.text.PlainXml;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the tables of an OpenDocument file: a workbook (ODS, flat FODS), or a text (ODT, FODT)
 * whose paragraphs before a table are its preamble. Our own small reader: libraries unfold what a
 * file says is repeated, here it is counted first.
 */
public final class OpenDocumentReader {
  private final String name;
  private final CellCount count;
  private final OpenDocumentStyles styles = new OpenDocumentStyles();
  private final OpenDocumentText texts = new OpenDocumentText(styles);
  private final List<Grid> grids = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private List<GridCell> preamble = new ArrayList<>();
  private boolean workbook;
  private int paragraphs;

  private OpenDocumentReader(String name) {
    this.name = name;
    this.count = new CellCount(name);
  }

  /**
   * Reads a packed OpenDocument file.
   *
   * @throws Refusal when it has a password or is damaged
   */
  public static Content read(PackedFile file) throws IOException {
    OpenDocumentReader reader = new OpenDocumentReader(file.name());
    try {
      if (file.has("META-INF/manifest.xml")) {
        try (InputStream in = file.open("META-INF/manifest.xml")) {
          if (new String(in.readAllBytes(), StandardCharsets.UTF_8).contains("encryption-data")) {
            throw new Refusal(
                file.name() + " is an OpenDocument file with a password: save it without one.",
                new Problem(file.name(), "a password", "a file without one"));
          }
        }
      }
      if (file.has("styles.xml")) {
        try (InputStream in = file.open("styles.xml")) {
          reader.styles(PlainXml.open(in));
        }
      }
      try (InputStream in = file.open("content.xml")) {
        reader.content(PlainXml.open(in));
      }
      return reader.told();
    } catch (Refusal e) {
      throw e;
    } catch (IOException | XMLStreamException | RuntimeException e) {
      throw damaged(file.name(), e);
    }
  }

  /**
   * Reads a flat OpenDocument file.
   *
   * @throws Refusal when it is damaged
   */
  public static Content readFlat(Original original) throws IOException {
    OpenDocumentReader reader = new OpenDocumentReader(original.name());
    try (InputStream in = original.content().open()) {
      reader.content(PlainXml.open(in));
      return reader.told();
    } catch (Refusal e) {
      throw e;
    } catch (XMLStreamException | RuntimeException e) {
      throw damaged(original.name(), e);
    }
  }

  private static Refusal damaged(String name, Exception cause) {
    return new Refusal(
        name + " is a damaged or incomplete OpenDocument file: save it anew and add it again.",
        cause,
        new Problem(name, "a damaged OpenDocument file", "a whole one"));
  }

  private void styles(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        styles.take(xml);
      }
    }
  }

  private void content(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && !styles.take(xml)) {
        element(xml);
      }
    }
  }

  private void element(XMLStreamReader xml) throws XMLStreamException {
    if (OpenDocumentText.isAside(xml)) {
      OpenDocumentText.skip(xml);
      return;
    }
    switch (xml.getLocalName()) {
      case "spreadsheet" -> workbook = true;
      case "presentation", "drawing" ->
          throw new Refusal(
              name + " is a presentation or drawing: copy its tables into a workbook.",
              new Problem(name, "a presentation", "a workbook or text"));
      case "table" -> {
        OpenDocumentTable table = new OpenDocumentTable(name, styles, texts, count);
        Grid grid = table.read(xml);
        if (!grid.rows().isEmpty() || workbook) {
          grids.add(grid.behind(preamble).from(workbook ? grid.name() : ""));
          findings.addAll(table.findings());
          preamble = new ArrayList<>();
        }
      }
      case "p", "h" -> {
        MarkedText text = new MarkedText();
        texts.paragraph(xml, text);
        paragraphs++;
        if (!workbook && !text.text().isEmpty()) {
          count.add(1);
          preamble.add(GridCell.of(paragraphs, 1, text.line()));
        }
      }
      default -> {}
    }
  }

  private Content told() {
    if (!workbook && grids.isEmpty()) {
      return new Content.Prose(
          preamble.stream().map(cell -> new Content.Line(cell.row(), cell.text())).toList());
    }
    if (grids.size() == 1) {
      grids.set(0, grids.get(0).named(""));
    }
    if (!preamble.isEmpty()) {
      grids.add(new Grid("after the tables", preamble, List.of(), List.of(), false));
    }
    return new Content.Tables(workbook ? "workbook" : "text document", grids, findings);
  }
}
