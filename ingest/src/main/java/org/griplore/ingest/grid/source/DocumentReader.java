package org.griplore.ingest.grid.source;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.json.JsonReader;
import org.griplore.ingest.grid.markup.HtmlReader;
import org.griplore.ingest.grid.markup.MarkdownReader;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.DelimiterFinder;
import org.griplore.ingest.grid.text.MarkupStart;
import org.griplore.ingest.grid.text.PlainText;
import org.griplore.ingest.grid.text.TextDecoding;
import org.griplore.ingest.grid.workbook.XlsxReader;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads any source by its content, never by its ending. */
public final class DocumentReader {
  private DocumentReader() {}

  /**
   * Reads a file.
   *
   * @throws Refusal as {@link #read(Original)}, and when it is missing, a folder or not readable
   */
  public static Content read(Path file) {
    if (Files.isDirectory(file)) {
      throw new Refusal(
          file + " is a folder: name a file in it.",
          new Problem(file.toString(), "a folder", "a file"));
    }
    if (!Files.exists(file)) {
      throw new Refusal(
          file + " does not exist: check its path.",
          new Problem(file.toString(), "", "a file that exists"));
    }
    return read(Original.of(file));
  }

  /** Reads a content under a name of its own. */
  public static Content read(String name, byte[] bytes) {
    return read(Original.of(name, bytes));
  }

  /** Reads a pasted text. */
  public static Content readText(String name, String text) {
    return read(name, text.getBytes(StandardCharsets.UTF_8));
  }

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
      ForeignContent.refuse(original);
      if (XlsxReader.isZip(original)) {
        return new Content.Tables("workbook", XlsxReader.read(original));
      }
      return readText(original, TextDecoding.of(original));
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  /**
   * How a source's text is encoded; empty for a workbook and other contents that are no text.
   *
   * @throws Refusal when it is text in no known encoding, or looks binary
   */
  public static Optional<Charset> encoding(Original original) {
    try {
      boolean text = !ForeignContent.is(original) && !XlsxReader.isZip(original);
      return text ? Optional.of(TextDecoding.of(original)) : Optional.empty();
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  /** The source as delimited text, for reading it row by row; empty when it is something else. */
  public static Optional<DelimitedText> delimited(Original original) {
    try {
      if (original.bytes() == 0 || ForeignContent.is(original) || XlsxReader.isZip(original)) {
        return Optional.empty();
      }
      Charset charset = TextDecoding.of(original);
      String start = start(original, charset);
      return isMarkup(start) || isJson(start)
          ? Optional.empty()
          : delimited(original, charset, start);
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  /** A text as delimited text, whatever its lines look like. */
  public static DelimitedText cut(Original original, char delimiter) {
    try {
      return new DelimitedText(original, TextDecoding.of(original), delimiter);
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  /**
   * All of a delimited text.
   *
   * @throws Refusal when a quote is never closed, or a row is no table's
   */
  public static Content tables(DelimitedText text) {
    try {
      return new Content.Tables("delimited text", List.of(text.grid()));
    } catch (IOException e) {
      throw unreadable(text.original(), e);
    }
  }

  private static Refusal unreadable(Original original, IOException cause) {
    return new Refusal(original.name() + " cannot be read: " + cause.getMessage() + ".", cause);
  }

  private static Content readText(Original original, Charset charset) throws IOException {
    String start = start(original, charset);
    if (start.isBlank()) {
      throw new Refusal(
          original.name() + " holds nothing but empty lines.",
          new Problem(original.name(), "empty lines", "a table, a page, JSON or notes"));
    }
    if (MarkupStart.isHtml(start)) {
      return new Content.Tables("page", HtmlReader.read(original, charset));
    }
    if (isMarkup(start)) {
      throw new Refusal(
          original.name() + " is XML of a kind that is not read: save it as CSV, XLSX or a page.",
          new Problem(original.name(), "XML", "a table, a page, JSON or notes"));
    }
    if (isJson(start)) {
      return new Content.Tables("JSON", JsonReader.read(original, charset));
    }
    Optional<DelimitedText> delimited = delimited(original, charset, start);
    if (delimited.isPresent()) {
      return new Content.Tables("delimited text", List.of(delimited.get().grid()));
    }
    return prose(original, charset);
  }

  private static Optional<DelimitedText> delimited(Original original, Charset charset, String start)
      throws IOException {
    List<String> lines = start.lines().toList();
    if (MarkdownReader.hasTable(lines)) {
      return Optional.empty();
    }
    boolean brokenOff = start.length() >= DelimitedText.CHARACTERS_LOOKED_AT;
    return DelimiterFinder.find(start, brokenOff)
        .filter(candidate -> candidate.isPlain() || !hasMarkdownMarks(lines))
        .map(candidate -> new DelimitedText(original, charset, candidate.delimiter()));
  }

  private static String start(Original original, Charset charset) throws IOException {
    try (Reader reader = TextDecoding.open(original, charset)) {
      return DelimitedText.start(reader);
    }
  }

  private static boolean isMarkup(String start) {
    return MarkupStart.isHtml(start) || start.stripLeading().startsWith("<?xml");
  }

  private static boolean isJson(String start) {
    String trimmed = start.stripLeading();
    if (trimmed.isEmpty() || trimmed.charAt(0) != '{' && trimmed.charAt(0) != '[') {
      return false;
    }
    String inside = trimmed.substring(1).stripLeading();
    return trimmed.charAt(0) == '{'
        ? inside.startsWith("\"") || inside.startsWith("}")
        : !inside.isEmpty() && "{[\"".indexOf(inside.charAt(0)) >= 0;
  }

  private static boolean hasMarkdownMarks(List<String> lines) {
    return lines.stream().anyMatch(line -> line.matches("#{1,6} .*"))
        || lines.stream().limit(60).filter(line -> line.matches("\\s*[-*] .*")).count() > 2;
  }

  private static Content prose(Original original, Charset charset) throws IOException {
    List<Content.Line> lines;
    try (Reader reader = TextDecoding.open(original, charset)) {
      lines = PlainText.lines(original.name(), reader);
    }
    List<String> texts = lines.stream().map(Content.Line::text).toList();
    if (MarkdownReader.hasTable(texts)) {
      List<Grid> grids = MarkdownReader.read(texts);
      if (!grids.isEmpty()) {
        return new Content.Tables("Markdown", grids);
      }
    }
    return new Content.Prose(lines);
  }
}
