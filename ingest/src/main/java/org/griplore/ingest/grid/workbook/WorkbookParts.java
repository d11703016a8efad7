package org.griplore.ingest.grid.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.griplore.ingest.grid.Grid;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Looks into a workbook's parts: refuses what would unpack to more than a workbook of tables ever
 * does, counted while unpacking and never believed from headers, and finds each sheet's merged
 * ranges.
 */
final class WorkbookParts {
  private static final long MOST_BYTES = 512L << 20;
  private static final long RATIO_FROM_BYTES = 10L << 20;
  private static final int HIGHEST_RATIO = 200;
  private static final int MOST_PARTS = 2000;
  private static final int UNKNOWN = -1;

  /** What a packed file is, by a part that only it has. */
  private static final Map<String, String> OTHER_PACKED =
      Map.of(
          "xl/workbook.bin", "a binary workbook (XLSB): save it as XLSX",
          "word/document.xml", "a text document: save its tables as XLSX or a page",
          "ppt/presentation.xml", "a presentation: copy its tables into a workbook",
          "content.xml", "an OpenDocument file: save it as XLSX");

  private static final XMLInputFactory XML = SheetPart.xml();

  private WorkbookParts() {}

  static Map<String, List<Grid.Merge>> mergesBySheet(String name, byte[] workbook) {
    Map<String, List<Grid.Merge>> mergesByPart = new HashMap<>();
    Map<String, String> partById = new HashMap<>();
    Map<String, String> idBySheet = new LinkedHashMap<>();
    boolean isWorkbook = false;
    int lastText = -1;
    int texts = UNKNOWN;
    String other = "a packed file: unpack it first";
    Unpacking unpacking = new Unpacking(name, workbook.length);
    try (ZipFile zip = ZipFile.builder().setByteArray(workbook).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        unpacking.nextPart();
        String part = entry.getName();
        other = OTHER_PACKED.getOrDefault(part, other);
        try (InputStream counted = unpacking.counted(zip.getInputStream(entry))) {
          if (part.equals("xl/workbook.xml")) {
            isWorkbook = true;
            sheetIds(counted, idBySheet);
          } else if (part.equals("xl/_rels/workbook.xml.rels")) {
            relations(counted, partById);
          } else if (part.startsWith("xl/worksheets/") && part.endsWith(".xml")) {
            SheetPart sheet = SheetPart.of(name, part, counted);
            mergesByPart.put(part, sheet.merges());
            lastText = Math.max(lastText, sheet.lastText());
          } else if (part.equalsIgnoreCase("xl/sharedStrings.xml")) {
            texts = SheetPart.sharedTexts(counted);
          }
          counted.transferTo(OutputStream.nullOutputStream());
        }
      }
    } catch (Refusal e) {
      throw e;
    } catch (IOException | XMLStreamException | RuntimeException e) {
      throw XlsxReader.damaged(name, e);
    }
    if (!isWorkbook) {
      throw unpacking.partCount() == 0
          ? XlsxReader.damaged(name, null)
          : new Refusal(
              name + " is no XLSX workbook, but " + other + ".",
              new Problem(name, other, "an XLSX workbook"));
    }
    if (texts != UNKNOWN && lastText >= texts) {
      throw new Refusal(
          "%s is a damaged or incomplete workbook: a cell shows its text %d, but it holds %d; save it anew and add it again."
              .formatted(name, lastText + 1, texts),
          new Problem(name, "a text that is missing", "a whole XLSX file"));
    }
    Map<String, List<Grid.Merge>> bySheet = new HashMap<>();
    idBySheet.forEach(
        (sheet, id) ->
            bySheet.put(
                sheet, mergesByPart.getOrDefault(partById.getOrDefault(id, ""), List.of())));
    return bySheet;
  }

  /** Counts what is unpacked. */
  private static final class Unpacking {
    private final String name;
    private final long packed;
    private long unpacked;
    private int parts;

    Unpacking(String name, long packed) {
      this.name = name;
      this.packed = packed;
    }

    void nextPart() {
      if (++parts > MOST_PARTS) {
        throw refusal("more than " + MOST_PARTS + " parts");
      }
    }

    int partCount() {
      return parts;
    }

    InputStream counted(InputStream in) {
      return new InputStream() {
        @Override
        public int read() throws IOException {
          int c = in.read();
          count(c < 0 ? 0 : 1);
          return c;
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
          int read = in.read(bytes, offset, length);
          count(Math.max(0, read));
          return read;
        }

        @Override
        public void close() throws IOException {
          in.close();
        }
      };
    }

    private void count(int bytes) {
      unpacked += bytes;
      if (unpacked > MOST_BYTES) {
        throw refusal("more than 512 MB");
      }
      if (unpacked > RATIO_FROM_BYTES && unpacked / HIGHEST_RATIO > packed) {
        throw refusal("more than " + HIGHEST_RATIO + " times its size");
      }
    }

    private Refusal refusal(String what) {
      return new Refusal(
          name + " would unpack to " + what + ": it is not read.",
          new Problem(name, what, "a workbook of tables"));
    }
  }

  private static void sheetIds(InputStream in, Map<String, String> idBySheet)
      throws XMLStreamException {
    XMLStreamReader xml = XML.createXMLStreamReader(in);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("sheet")) {
        String id = null;
        for (int i = 0; i < xml.getAttributeCount(); i++) {
          if (xml.getAttributeLocalName(i).equals("id")) {
            id = xml.getAttributeValue(i);
          }
        }
        idBySheet.put(xml.getAttributeValue(null, "name"), id);
      }
    }
  }

  private static void relations(InputStream in, Map<String, String> partById)
      throws XMLStreamException {
    XMLStreamReader xml = XML.createXMLStreamReader(in);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("Relationship")) {
        String target = xml.getAttributeValue(null, "Target");
        String part = target.startsWith("/") ? target.substring(1) : "xl/" + target;
        partById.put(xml.getAttributeValue(null, "Id"), part);
      }
    }
  }
}
