package org.griplore.ingest.messy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * An Office Open XML workbook (ECMA-376, part 1, 18) made from a text, a line a cell:
 *
 * <pre>
 * --- sheet Results            (or: --- hidden sheet Old)
 * row 5 hidden
 * col 3 hidden
 * merge A1:C1
 * comment B3 invalid
 * A1 t Tyre                    a text; {@code ^2^} in it is raised
 * B2 n 31.4                    a number
 * B3 struck 31.4               a number struck out; {@code metres}: shown as 31.4 m; {@code day}: a date
 * B4 f B2+B3                   a formula without a value
 * B5 fv B2+B3 = 62.8           a formula with its value
 * B6 empty                     an empty inline string
 * </pre>
 */
final class RawBook {
  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String STYLES =
      "<styleSheet xmlns=\""
          + MAIN
          + "\"><numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"0.0&quot; m&quot;\"/></numFmts>"
          + "<fonts count=\"2\"><font/><font><strike/></font></fonts><fills count=\"1\"><fill/></fills><borders count=\"1\"><border/></borders>"
          + "<cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"4\"><xf/><xf fontId=\"1\" applyFont=\"1\"/>"
          + "<xf numFmtId=\"164\" applyNumberFormat=\"1\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final StringBuilder sheetList = new StringBuilder();
  private final StringBuilder relations = new StringBuilder();
  private final StringBuilder types = new StringBuilder();
  private int sheets;

  private RawBook() {}

  static byte[] of(String text) {
    RawBook book = new RawBook();
    for (String sheet : text.split("(?m)^--- ")) {
      if (!sheet.isBlank()) {
        String[] headAndLines = sheet.split("\n", 2);
        book.sheet(headAndLines[0].strip(), headAndLines[1].lines().toList());
      }
    }
    return book.packed();
  }

  private void sheet(String head, List<String> lines) {
    sheets++;
    boolean hidden = head.startsWith("hidden ");
    String name = head.replaceFirst("^(hidden )?sheet ", "");
    sheetList
        .append("<sheet name=\"")
        .append(SketchPage.escaped(name))
        .append("\" sheetId=\"")
        .append(sheets);
    sheetList
        .append(hidden ? "\" state=\"hidden" : "")
        .append("\" r:id=\"rId")
        .append(sheets)
        .append("\"/>");
    relation(relations, "rId" + sheets, "worksheet", "worksheets/sheet" + sheets + ".xml");
    type("/xl/worksheets/sheet" + sheets + ".xml", "worksheet");
    Map<Integer, Map<Integer, String>> rows = new TreeMap<>();
    List<String> hiddenRows = new ArrayList<>();
    StringBuilder columns = new StringBuilder();
    StringBuilder merges = new StringBuilder();
    StringBuilder comments = new StringBuilder();
    for (String line : lines) {
      String[] words = line.split(" ", 3);
      switch (words[0]) {
        case "", "row" -> hiddenRows.add(words.length > 1 ? words[1] : "");
        case "col" ->
            columns
                .append("<col min=\"")
                .append(words[1])
                .append("\" max=\"")
                .append(words[1])
                .append("\" hidden=\"1\"/>");
        case "merge" -> merges.append("<mergeCell ref=\"").append(words[1]).append("\"/>");
        case "comment" ->
            comments
                .append("<comment ref=\"")
                .append(words[1])
                .append("\" authorId=\"0\"><text><t>")
                .append(SketchPage.escaped(words[2]))
                .append("</t></text></comment>");
        default -> {
          int row = Integer.parseInt(words[0].replaceAll("\\D", ""));
          rows.computeIfAbsent(row, r -> new TreeMap<>())
              .put(
                  words[0].charAt(0) - 'A',
                  cell(words[0], words[1], words.length > 2 ? words[2] : ""));
        }
      }
    }
    StringBuilder xml =
        new StringBuilder(HEAD).append("<worksheet xmlns=\"").append(MAIN).append("\">");
    xml.append(columns.isEmpty() ? "" : "<cols>" + columns + "</cols>").append("<sheetData>");
    rows.forEach(
        (row, cells) -> {
          xml.append("<row r=\"").append(row);
          xml.append(hiddenRows.contains(row.toString()) ? "\" hidden=\"1" : "").append("\">");
          cells.values().forEach(xml::append);
          xml.append("</row>");
        });
    xml.append("</sheetData>");
    xml.append(merges.isEmpty() ? "" : "<mergeCells>" + merges + "</mergeCells>")
        .append("</worksheet>");
    put("xl/worksheets/sheet" + sheets + ".xml", xml.toString());
    if (!comments.isEmpty()) {
      put(
          "xl/comments" + sheets + ".xml",
          HEAD
              + "<comments xmlns=\""
              + MAIN
              + "\"><authors><author>x</author></authors><commentList>"
              + comments
              + "</commentList></comments>");
      type("/xl/comments" + sheets + ".xml", "comments");
      StringBuilder own = new StringBuilder();
      relation(own, "rId1", "comments", "../comments" + sheets + ".xml");
      put("xl/worksheets/_rels/sheet" + sheets + ".xml.rels", relationships(own));
    }
  }

  private static String cell(String at, String kind, String text) {
    String open = "<c r=\"" + at + "\"";
    return switch (kind) {
      case "t" -> open + " t=\"inlineStr\"><is>" + rich(text) + "</is></c>";
      case "n" -> open + "><v>" + text + "</v></c>";
      case "struck" -> open + " s=\"1\"><v>" + text + "</v></c>";
      case "metres" -> open + " s=\"2\"><v>" + text + "</v></c>";
      case "day" -> open + " s=\"3\"><v>" + text + "</v></c>";
      case "f" -> open + "><f>" + SketchPage.escaped(text) + "</f></c>";
      case "fv" ->
          open
              + "><f>"
              + SketchPage.escaped(text.split(" = ")[0])
              + "</f><v>"
              + text.split(" = ")[1]
              + "</v></c>";
      case "empty" -> open + " t=\"inlineStr\"><is><t></t></is></c>";
      default -> throw new IllegalArgumentException("no such kind of cell: " + kind);
    };
  }

  private static String rich(String text) {
    String[] runs = text.split("\\^");
    if (runs.length == 1) {
      return "<t xml:space=\"preserve\">" + SketchPage.escaped(text) + "</t>";
    }
    StringBuilder xml = new StringBuilder();
    for (int i = 0; i < runs.length; i++) {
      xml.append("<r>").append(i % 2 == 1 ? "<rPr><vertAlign val=\"superscript\"/></rPr>" : "");
      xml.append("<t xml:space=\"preserve\">")
          .append(SketchPage.escaped(runs[i]))
          .append("</t></r>");
    }
    return xml.toString();
  }

  private byte[] packed() {
    relation(relations, "rIdS", "styles", "styles.xml");
    type("/xl/styles.xml", "styles");
    type("/xl/workbook.xml", "sheet.main");
    put("xl/styles.xml", HEAD + STYLES);
    put(
        "xl/workbook.xml",
        HEAD
            + "<workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + OFFICE
            + "\"><sheets>"
            + sheetList
            + "</sheets></workbook>");
    put("xl/_rels/workbook.xml.rels", relationships(relations));
    StringBuilder root = new StringBuilder();
    relation(root, "rId1", "officeDocument", "xl/workbook.xml");
    put("_rels/.rels", relationships(root));
    put(
        "[Content_Types].xml",
        HEAD
            + "<Types xmlns=\""
            + PACKAGE
            + "content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
            + types
            + "</Types>");
    return PackedParts.zip(parts);
  }

  private void type(String part, String kind) {
    types
        .append("<Override PartName=\"")
        .append(part)
        .append("\" ContentType=\"")
        .append(TYPE)
        .append(kind)
        .append("+xml\"/>");
  }

  private static void relation(StringBuilder to, String id, String kind, String target) {
    to.append("<Relationship Id=\"")
        .append(id)
        .append("\" Type=\"")
        .append(OFFICE)
        .append('/')
        .append(kind);
    to.append("\" Target=\"").append(target).append("\"/>");
  }

  private static String relationships(StringBuilder inner) {
    return HEAD
        + "<Relationships xmlns=\""
        + PACKAGE
        + "relationships\">"
        + inner
        + "</Relationships>";
  }

  private void put(String part, String xml) {
    parts.put(part, xml.getBytes(StandardCharsets.UTF_8));
  }
}
