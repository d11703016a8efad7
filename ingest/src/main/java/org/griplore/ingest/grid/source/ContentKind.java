package org.griplore.ingest.grid.source;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a source is, by its first bytes. */
enum ContentKind {
  /** A packed file: a workbook, a document, or files packed together. */
  PACKED,
  /** A compound file: a workbook or document of the old binary form, or one with a password. */
  COMPOUND,
  /** A PDF. */
  PDF,
  /** A rich-text document. */
  RICH_TEXT,
  /** A workbook as XML (Excel 2003), or a flat OpenDocument: both XML of their own kind. */
  SPREADSHEET_XML,
  /** A flat OpenDocument file. */
  FLAT_OPEN_DOCUMENT,
  /** XML of another kind than a page. */
  OTHER_XML,
  /** A letter, or a page saved as one. */
  LETTER,
  /** Known and not read. */
  FOREIGN,
  /** Text of any other kind. */
  TEXT;

  private static final int LOOKED_AT = 8192;
  private static final int PDF_BEGINS_WITHIN = 1024;
  private static final Pattern HEADER_LINE =
      Pattern.compile("([A-Za-z][A-Za-z0-9-]{1,60}):[ \\t].*|[ \\t]+\\S.*");
  private static final Pattern ROOT =
      Pattern.compile("<([A-Za-z_][\\w.-]{0,60}:)?([A-Za-z_][\\w.-]{0,60})[\\s>/]");
  private static final List<String> OF_LETTERS_ONLY =
      List.of(
          "mime-version",
          "message-id",
          "received",
          "return-path",
          "content-transfer-encoding",
          "snapshot-content-location",
          "x-mailer",
          "delivered-to");
  private static final List<String> OF_LETTERS =
      List.of("from", "subject", "to", "date", "content-type");

  /** Tells what bytes begin. */
  static ContentKind of(byte[] head) {
    String all = new String(head, 0, Math.min(head.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
    if (all.startsWith("PK") && head.length >= 4 && head[2] < 9 && head[3] < 9) {
      return PACKED;
    }
    if (all.startsWith("\u00d0\u00cf\u0011\u00e0")) {
      return COMPOUND;
    }
    if (ForeignContent.what(all) != null) {
      return FOREIGN;
    }
    // UTF-16 and byte order marks apart, what follows is told by ASCII alone
    String ascii =
        all.replace("\0", "").replaceFirst("^(\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)", "");
    String start = ascii.stripLeading();
    int pdf = all.indexOf("%PDF-");
    if (pdf == 0 || pdf > 0 && pdf < PDF_BEGINS_WITHIN && !start.startsWith("<")) {
      return PDF;
    }
    if (start.startsWith("{\\rtf")) {
      return RICH_TEXT;
    }
    if (start.startsWith("<")) {
      return markup(start);
    }
    return isLetter(start) ? LETTER : TEXT;
  }

  private static ContentKind markup(String start) {
    String bare = start.replaceAll("(?s)<!--.*?-->|<\\?.*?\\?>|<!DOCTYPE[^>\\[]*>", " ");
    Matcher root = ROOT.matcher(bare);
    String name = root.find() ? root.group(2) : "";
    boolean spreadsheet = start.contains("urn:schemas-microsoft-com:office:spreadsheet");
    if (name.equals("Workbook") && spreadsheet) {
      return SPREADSHEET_XML;
    }
    if (name.equals("document") && start.contains("urn:oasis:names:tc:opendocument")) {
      return FLAT_OPEN_DOCUMENT;
    }
    boolean page = name.equalsIgnoreCase("html") || !start.startsWith("<?xml");
    return page ? TEXT : OTHER_XML;
  }

  /** Whether a text begins with the header of a letter (RFC 5322, 2.2). */
  private static boolean isLetter(String start) {
    boolean only = false;
    boolean some = false;
    int lines = 0;
    for (String line : start.split("\r\n|\n|\r", 200)) {
      if (lines++ == 0 && line.startsWith("From ")) {
        continue;
      }
      Matcher header = HEADER_LINE.matcher(line);
      if (!header.matches()) {
        return line.isBlank() && only && some;
      }
      if (header.group(1) != null) {
        String field = header.group(1).toLowerCase(Locale.ROOT);
        only |= OF_LETTERS_ONLY.contains(field);
        some |= OF_LETTERS.contains(field);
      }
    }
    return only && some;
  }
}
