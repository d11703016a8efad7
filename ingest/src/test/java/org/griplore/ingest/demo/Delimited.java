package org.griplore.ingest.demo;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A delimited text file's dress.
 *
 * @param delimiter between cells
 * @param charset of the text
 * @param mark whether a byte order mark leads
 * @param newline line end
 * @param padded whether lines above the table are filled up with empty cells, as a spreadsheet's
 *     export does
 */
record Delimited(String delimiter, Charset charset, boolean mark, String newline, boolean padded) {
  static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  static final Delimited COMMA = new Delimited(",", StandardCharsets.UTF_8, false, "\n", false);
  static final Delimited TAB = new Delimited("\t", StandardCharsets.UTF_8, false, "\n", false);
  static final Delimited SEMICOLON = new Delimited(";", StandardCharsets.UTF_8, false, "\n", false);
  static final Delimited EXPORTED = new Delimited(";", WINDOWS_1252, false, "\r\n", true);
  static final Delimited MARKED = new Delimited(";", StandardCharsets.UTF_8, true, "\r\n", true);
  static final Delimited WIDE = new Delimited("\t", StandardCharsets.UTF_16LE, true, "\r\n", false);

  /** A line of cells, quoted where needed (RFC 4180, section 2). */
  static String line(String delimiter, List<String> cells) {
    return cells.stream()
        .map(
            c ->
                c.contains(delimiter) || c.contains("\"") || c.contains("\n")
                    ? '"' + c.replace("\"", "\"\"") + '"'
                    : c)
        .collect(Collectors.joining(delimiter));
  }

  /** The sheet as a file: title, details, an empty line, the table, an empty line, what follows. */
  byte[] write(Sheet sheet, Lingo lingo) {
    List<String> lines = new ArrayList<>();
    int width = sheet.header().size();
    if (!sheet.title().isEmpty()) {
      lines.add(single(sheet.title(), width));
    }
    for (Sheet.Detail d : sheet.details()) {
      lines.add(single(d.name() + ": " + d.value().text(lingo), width));
    }
    if (!lines.isEmpty()) {
      lines.add(single("", width));
    }
    lines.add(line(delimiter, sheet.header()));
    if (!sheet.units().isEmpty()) {
      lines.add(line(delimiter, sheet.units()));
    }
    for (List<DemoCell> row : sheet.rows()) {
      lines.add(line(delimiter, row.stream().map(c -> c.text(lingo)).toList()));
    }
    if (!sheet.below().isEmpty()) {
      lines.add(single("", width));
      sheet.below().forEach(text -> lines.add(single(text, width)));
    }
    return bytes(lines);
  }

  /** The lines in this charset with these line ends. */
  byte[] bytes(List<String> lines) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(mark ? "\ufeff".getBytes(charset) : new byte[0]);
    for (String one : lines) {
      out.writeBytes((one + newline).getBytes(charset));
    }
    return out.toByteArray();
  }

  private String single(String text, int width) {
    List<String> cells = new ArrayList<>();
    cells.add(text);
    if (padded) {
      cells.addAll(Collections.nCopies(width - 1, ""));
    }
    return line(delimiter, cells);
  }
}
