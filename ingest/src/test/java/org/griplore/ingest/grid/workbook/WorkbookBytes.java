package org.griplore.ingest.grid.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook written part by part, so that it can hold what no library would write. */
public final class WorkbookBytes {
  private static final String SPREADSHEET =
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private final Map<String, String> parts = new LinkedHashMap<>();

  /** One sheet named Wet with these rows and what follows them; number formats by style index. */
  public static WorkbookBytes of(String rows, String behindRows, String... formats) {
    WorkbookBytes bytes = new WorkbookBytes();
    bytes.parts.put(
        "[Content_Types].xml",
        """
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
        <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
        <Default Extension="xml" ContentType="application/xml"/>
        <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>
        <Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>
        <Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
        </Types>""");
    bytes.parts.put(
        "_rels/.rels",
        relations("rId1", RELATIONS + "/officeDocument", "xl/workbook.xml", "", "", ""));
    bytes.parts.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            "rId1",
            RELATIONS + "/worksheet",
            "worksheets/sheet1.xml",
            "rId2",
            RELATIONS + "/styles",
            "styles.xml"));
    bytes.parts.put(
        "xl/workbook.xml",
        "<workbook xmlns=\"%s\" xmlns:r=\"%s\"><workbookPr/><sheets><sheet name=\"Wet\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>"
            .formatted(SPREADSHEET, RELATIONS));
    bytes.parts.put("xl/styles.xml", styles(formats));
    bytes.parts.put(
        "xl/worksheets/sheet1.xml",
        "<worksheet xmlns=\"%s\"><sheetData>%s</sheetData>%s</worksheet>"
            .formatted(SPREADSHEET, rows, behindRows));
    return bytes;
  }

  /** A packed file without parts. */
  public static WorkbookBytes empty() {
    return new WorkbookBytes();
  }

  private static String relations(
      String id, String type, String target, String id2, String type2, String target2) {
    String one = "<Relationship Id=\"%s\" Type=\"%s\" Target=\"%s\"/>";
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + one.formatted(id, type, target)
        + (id2.isEmpty() ? "" : one.formatted(id2, type2, target2))
        + "</Relationships>";
  }

  private static String styles(String... formats) {
    StringBuilder codes = new StringBuilder();
    StringBuilder cells = new StringBuilder("<xf numFmtId=\"0\"/>");
    for (int i = 0; i < formats.length; i++) {
      boolean builtIn = formats[i].matches("\\d+");
      String id = builtIn ? formats[i] : Integer.toString(164 + i);
      if (!builtIn) {
        codes.append(
            "<numFmt numFmtId=\"%s\" formatCode=\"%s\"/>"
                .formatted(id, formats[i].replace("\"", "&quot;")));
      }
      cells.append("<xf numFmtId=\"%s\" applyNumberFormat=\"1\"/>".formatted(id));
    }
    return "<styleSheet xmlns=\"%s\"><numFmts>%s</numFmts><cellXfs>%s</cellXfs></styleSheet>"
        .formatted(SPREADSHEET, codes, cells);
  }

  /** The same with a part replaced or added. */
  public WorkbookBytes with(String part, String text) {
    parts.put(part, text);
    return this;
  }

  /** A part's text. */
  public String part(String name) {
    return parts.get(name);
  }

  public byte[] zipped() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
