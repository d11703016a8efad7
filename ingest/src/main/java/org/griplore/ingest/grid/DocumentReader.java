package org.griplore.ingest.grid;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads any source by its content, never by its ending. */
public final class DocumentReader {
  private static final Pattern HTML =
      Pattern.compile(
          "(?is)^\\s*(<\\?xml[^>]*>\\s*)?(<!--.*?-->\\s*)*(<!doctype html|<html|<head|<body|<table|<meta|<div|<main|<article|<section|<p\\b|<h[1-6]\\b).*");
  private static final int LONGEST_LINE = 10 * 1024 * 1024;

  private DocumentReader() {}

  /**
   * Reads a source into tables or prose.
   *
   * @throws Refusal when it is damaged, dangerous, empty or nothing that can be read
   */
  public static Content read(Original original) {
    try {
      if (original.bytes() == 0) {
        throw new Refusal(
            original.name() + " is empty.",
            new Problem(original.name(), "0 bytes", "a table, a page, JSON or notes"));
      }
      refuseForeign(original);
      if (XlsxReader.isZip(original)) {
        return new Content.Tables("workbook", XlsxReader.read(original));
      }
      return readText(original, TextDecoding.of(original));
    } catch (IOException e) {
      throw new Refusal(original.name() + " cannot be read: " + e.getMessage() + ".", e);
    }
  }

  /** The source as delimited text, for reading it row by row; empty when it is something else. */
  public static Optional<DelimitedText> delimited(Original original) {
    try {
      if (original.bytes() == 0 || isForeign(original) || XlsxReader.isZip(original)) {
        return Optional.empty();
      }
      Charset charset = TextDecoding.of(original);
      String start = start(original, charset);
      if (isHtml(start) || isJson(start) || isMarkdown(start)) {
        return Optional.empty();
      }
      OptionalInt delimiter = DelimitedText.delimiter(start);
      return delimiter.isEmpty()
          ? Optional.empty()
          : Optional.of(new DelimitedText(original, charset, (char) delimiter.getAsInt()));
    } catch (IOException e) {
      throw new Refusal(original.name() + " cannot be read: " + e.getMessage() + ".", e);
    }
  }

  private static Content readText(Original original, Charset charset) throws IOException {
    String start = start(original, charset);
    if (start.isBlank()) {
      throw new Refusal(
          original.name() + " holds nothing but empty lines.",
          new Problem(original.name(), "empty lines", "a table, a page, JSON or notes"));
    }
    if (isHtml(start)) {
      return new Content.Tables("page", HtmlReader.read(original, charset));
    }
    if (isJson(start)) {
      return new Content.Tables("JSON", JsonReader.read(original, charset));
    }
    OptionalInt delimiter =
        isMarkdown(start) ? OptionalInt.empty() : DelimitedText.delimiter(start);
    if (delimiter.isPresent()) {
      DelimitedText text = new DelimitedText(original, charset, (char) delimiter.getAsInt());
      return new Content.Tables("delimited text", List.of(text.grid()));
    }
    return prose(original, charset);
  }

  private static String start(Original original, Charset charset) throws IOException {
    try (Reader reader = TextDecoding.open(original, charset)) {
      return DelimitedText.start(reader);
    }
  }

  private static boolean isHtml(String start) {
    return HTML.matcher(start.length() > 4096 ? start.substring(0, 4096) : start).matches();
  }

  private static boolean isJson(String start) {
    String trimmed = start.stripLeading();
    return trimmed.startsWith("{")
        || trimmed.startsWith("[") && trimmed.matches("(?s)\\[\\s*[{\\[\"].*");
  }

  private static boolean isMarkdown(String start) {
    return start.lines().anyMatch(line -> line.matches("#{1,6} .*"))
        || start.lines().limit(60).filter(line -> line.matches("\\s*[-*] .*")).count() > 2;
  }

  private static Content prose(Original original, Charset charset) throws IOException {
    List<Content.Line> lines = new ArrayList<>();
    try (BufferedReader reader = new BufferedReader(TextDecoding.open(original, charset))) {
      StringBuilder line = new StringBuilder();
      int number = 1;
      int c;
      while ((c = reader.read()) >= 0) {
        if (c == '\n') {
          lines.add(new Content.Line(number++, line.toString().stripTrailing()));
          line.setLength(0);
        } else {
          line.append((char) c);
          if (line.length() > LONGEST_LINE) {
            throw new Refusal(
                "%s, line %d: this line is longer than 10 million characters; expected notes or a table."
                    .formatted(original.name(), number),
                new Problem(
                    original.name() + ", line " + number, "a very long line", "lines of text"));
          }
        }
      }
      lines.add(new Content.Line(number, line.toString().stripTrailing()));
    }
    return new Content.Prose(lines);
  }

  private static byte[] head(Original original) throws IOException {
    try (InputStream in = original.content().open()) {
      return in.readNBytes(16);
    }
  }

  private static boolean isForeign(Original original) throws IOException {
    return foreign(head(original)) != null;
  }

  private static void refuseForeign(Original original) throws IOException {
    String what = foreign(head(original));
    if (what != null) {
      throw new Refusal(
          original.name() + " is " + what + ".",
          new Problem(original.name(), what, "a table, a page, JSON or notes"));
    }
  }

  /** What a content is that we know but do not read, with what to do; null for all others. */
  private static String foreign(byte[] head) {
    String ascii = new String(head, StandardCharsets.ISO_8859_1);
    if (ascii.startsWith("\u00d0\u00cf\u0011\u00e0")) {
      return "a workbook of the old binary form or one with a password: save it as XLSX without one";
    }
    if (ascii.startsWith("%PDF")) {
      return "a PDF: copy its table into a CSV file or paste it";
    }
    if (ascii.startsWith("\u0089PNG")
        || ascii.startsWith("\u00ff\u00d8\u00ff")
        || ascii.startsWith("GIF8")) {
      return "a picture: type its table into a CSV file";
    }
    if (ascii.startsWith("\u001f\u008b")
        || ascii.startsWith("7z\u00bc\u00af")
        || ascii.startsWith("Rar!")) {
      return "a packed file: unpack it first";
    }
    if (ascii.toLowerCase(Locale.ROOT).startsWith("sqlite format")) {
      return "a database: export its table as CSV";
    }
    return null;
  }
}
