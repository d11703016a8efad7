package org.griplore.ingest.messy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sends sketches around: as a letter with an attachment, in a packed folder, as rich text. */
final class SketchMail {
  private SketchMail() {}

  /** A letter of two words and the table as an attached file (RFC 5322, RFC 2045). */
  static byte[] letter(Sketch sketch) {
    String table = SketchText.delimited(sketch, ";", false);
    String attached =
        Base64.getMimeEncoder(76, "\r\n".getBytes(StandardCharsets.US_ASCII))
            .encodeToString(table.getBytes(StandardCharsets.UTF_8));
    return """
        From: a.colleague@example.org
        To: tests@example.org
        Subject: Results
        Date: Mon, 6 May 2024 08:15:00 +0200
        MIME-Version: 1.0
        Content-Type: multipart/mixed; boundary="cut"

        --cut
        Content-Type: text/plain; charset=utf-8

        As promised, see below.

        --cut
        Content-Type: text/csv; charset=utf-8; name="results.csv"
        Content-Disposition: attachment; filename="results.csv"
        Content-Transfer-Encoding: base64

        %s
        --cut--
        """
        .formatted(attached)
        .replace("\r\n", "\n")
        .replace("\n", "\r\n")
        .getBytes(StandardCharsets.US_ASCII);
  }

  /** A packed folder with the table, a lock file and a thumbnail beside it. */
  static byte[] folder(Sketch sketch) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    parts.put("tests/~$results.xlsx", new byte[] {5, 'u', 's', 'e', 'r'});
    parts.put(
        "tests/results.csv",
        SketchText.delimited(sketch, ";", false).getBytes(StandardCharsets.UTF_8));
    parts.put("tests/Thumbs.db", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0});
    return PackedParts.zip(parts);
  }

  /** Rich text with a table a sketch (RTF 1.9, tables): a paragraph a cell. */
  static byte[] richText(List<Sketch> sketches) {
    StringBuilder text =
        new StringBuilder("{\\rtf1\\ansi\\ansicpg1252\\deff0{\\fonttbl{\\f0 Arial;}}\n");
    for (Sketch sketch : sketches) {
      sketch.above().forEach(row -> text.append(escaped(String.join(" ", row))).append("\\par\n"));
      for (List<String> row : sketch.table()) {
        List<String> cells = new ArrayList<>(row);
        while (cells.size() < sketch.width()) {
          cells.add("");
        }
        text.append("\\trowd\\trgaph70");
        for (int c = 1; c <= cells.size(); c++) {
          text.append("\\cellx").append(1500 * c);
        }
        text.append('\n');
        cells.forEach(
            cell ->
                text.append("\\pard\\intbl ")
                    .append(escaped(Sketch.plain(cell)))
                    .append("\\cell\n"));
        text.append("\\row\n");
      }
      text.append("\\pard\n");
      sketch.below().forEach(row -> text.append(escaped(String.join(" ", row))).append("\\par\n"));
    }
    return text.append("}\n").toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    for (char c : text.toCharArray()) {
      if (c == '\\' || c == '{' || c == '}') {
        escaped.append('\\').append(c);
      } else if (c < 128) {
        escaped.append(c);
      } else {
        escaped.append("\\u").append((int) (short) c).append('?');
      }
    }
    return escaped.toString();
  }
}
