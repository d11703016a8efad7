package org.griplore.ingest.messy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes sketches in forms that are XML: Excel 2003, OpenDocument (ODF 1.3, part 3) and the tables
 * of a WordprocessingML document (ECMA-376, part 1, 17.4).
 */
final class SketchXml {
  private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

  private SketchXml() {}

  private static List<List<String>> rows(Sketch sketch) {
    List<List<String>> rows = new ArrayList<>(sketch.above());
    rows.addAll(sketch.table());
    rows.addAll(sketch.below());
    return rows;
  }

  private static boolean number(String cell) {
    return cell.matches("-?\\d+(?:[.,]\\d+)?");
  }

  private static String escaped(String text) {
    return SketchPage.escaped(Sketch.plain(text)).replace("\"", "&quot;");
  }

  /** Excel 2003 XML: figures as numbers; joined cells left open. */
  static byte[] spreadsheet(List<Sketch> sketches) {
    StringBuilder xml = new StringBuilder(HEAD);
    xml.append("<?mso-application progid=\"Excel.Sheet\"?>\n")
        .append("<Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\"")
        .append(" xmlns:ss=\"urn:schemas-microsoft-com:office:spreadsheet\">\n");
    for (Sketch sketch : sketches) {
      xml.append("<Worksheet ss:Name=\"").append(escaped(sketch.name())).append("\"><Table>\n");
      for (List<String> row : rows(sketch)) {
        xml.append("<Row>");
        for (String cell : row) {
          boolean number = number(cell);
          xml.append("<Cell><Data ss:Type=\"").append(number ? "Number" : "String").append("\">");
          xml.append(number ? cell.replace(',', '.') : escaped(cell)).append("</Data></Cell>");
        }
        xml.append("</Row>\n");
      }
      xml.append("</Table></Worksheet>\n");
    }
    return xml.append("</Workbook>\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  /** An OpenDocument workbook: a figure's value beside the text shown. */
  static byte[] openDocument(List<Sketch> sketches) {
    StringBuilder xml = new StringBuilder(HEAD);
    xml.append("<office:document-content")
        .append(" xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\"")
        .append(" xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\"")
        .append(" xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"")
        .append(" office:version=\"1.3\"><office:body><office:spreadsheet>\n");
    for (Sketch sketch : sketches) {
      xml.append("<table:table table:name=\"").append(escaped(sketch.name())).append("\">\n");
      for (List<String> row : rows(sketch)) {
        xml.append("<table:table-row>");
        for (String cell : row.isEmpty() ? List.of("") : row) {
          openCell(xml, cell);
        }
        xml.append("</table:table-row>\n");
      }
      xml.append("</table:table>\n");
    }
    xml.append("</office:spreadsheet></office:body></office:document-content>\n");
    Map<String, byte[]> parts = new LinkedHashMap<>();
    String type = "application/vnd.oasis.opendocument.spreadsheet";
    parts.put("mimetype", type.getBytes(StandardCharsets.US_ASCII));
    parts.put("content.xml", xml.toString().getBytes(StandardCharsets.UTF_8));
    parts.put(
        "META-INF/manifest.xml",
        (HEAD
                + "<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\">"
                + "<manifest:file-entry manifest:full-path=\"/\" manifest:media-type=\""
                + type
                + "\"/></manifest:manifest>")
            .getBytes(StandardCharsets.UTF_8));
    return PackedParts.zip(parts);
  }

  private static void openCell(StringBuilder xml, String cell) {
    if (Sketch.plain(cell).isEmpty()) {
      xml.append(cell.isEmpty() ? "<table:table-cell/>" : "<table:covered-table-cell/>");
      return;
    }
    xml.append("<table:table-cell office:value-type=\"");
    if (number(cell)) {
      xml.append("float\" office:value=\"").append(cell.replace(',', '.')).append("\">");
    } else {
      xml.append("string\">");
    }
    xml.append("<text:p>").append(escaped(cell)).append("</text:p></table:table-cell>");
  }

  /** A letter or report with the tables in it, lines above and below as paragraphs. */
  static byte[] document(List<Sketch> sketches) {
    StringBuilder xml = new StringBuilder(HEAD);
    xml.append(
            "<w:document xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\">")
        .append("<w:body>\n");
    for (Sketch sketch : sketches) {
      sketch.above().forEach(row -> paragraph(xml, String.join(" ", row)));
      xml.append("<w:tbl>\n");
      SketchSpans spans = new SketchSpans(sketch.table());
      for (int r = 0; r < sketch.table().size(); r++) {
        xml.append("<w:tr>");
        for (int c = 0; c < sketch.table().get(r).size(); c++) {
          wordCell(xml, sketch, spans, r, c);
        }
        xml.append("</w:tr>\n");
      }
      xml.append("</w:tbl>\n");
      sketch.below().forEach(row -> paragraph(xml, String.join(" ", row)));
    }
    xml.append("</w:body></w:document>\n");
    Map<String, byte[]> parts = new LinkedHashMap<>();
    parts.put(
        "[Content_Types].xml",
        (HEAD
                + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Override PartName=\"/word/document.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml\"/>"
                + "</Types>")
            .getBytes(StandardCharsets.UTF_8));
    parts.put(
        "_rels/.rels",
        (HEAD
                + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + "<Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"word/document.xml\"/>"
                + "</Relationships>")
            .getBytes(StandardCharsets.UTF_8));
    parts.put("word/document.xml", xml.toString().getBytes(StandardCharsets.UTF_8));
    return PackedParts.zip(parts);
  }

  private static void wordCell(StringBuilder xml, Sketch sketch, SketchSpans spans, int r, int c) {
    String cell = sketch.table().get(r).get(c);
    if (cell.equals(Sketch.LEFT)) {
      return;
    }
    xml.append("<w:tc><w:tcPr>");
    if (spans.across(r, c) > 1) {
      xml.append("<w:gridSpan w:val=\"").append(spans.across(r, c)).append("\"/>");
    }
    if (cell.equals(Sketch.UP)) {
      xml.append("<w:vMerge/>");
    } else if (spans.down(r, c) > 1) {
      xml.append("<w:vMerge w:val=\"restart\"/>");
    }
    xml.append("</w:tcPr>");
    paragraph(xml, Sketch.plain(cell));
    xml.append("</w:tc>");
  }

  private static void paragraph(StringBuilder xml, String text) {
    xml.append("<w:p>");
    if (!text.isEmpty()) {
      xml.append("<w:r><w:t xml:space=\"preserve\">").append(escaped(text)).append("</w:t></w:r>");
    }
    xml.append("</w:p>");
  }
}
