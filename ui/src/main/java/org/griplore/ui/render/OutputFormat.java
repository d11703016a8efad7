package org.griplore.ui.render;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.griplore.query.answer.Answer;

/** The renderings to choose from. */
public enum OutputFormat {
  TABLE("table", "text/plain;charset=utf-8", "txt"),
  JSON("json", "application/json;charset=utf-8", "json"),
  CSV("csv", "text/csv;charset=utf-8", "csv"),
  MARKDOWN("markdown", "text/markdown;charset=utf-8", "md"),
  HTML("html", "text/html;charset=utf-8", "html"),
  XLSX("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "xlsx");

  private final String word;
  private final String contentType;
  private final String ending;

  OutputFormat(String word, String contentType, String ending) {
    this.word = word;
    this.contentType = contentType;
    this.ending = ending;
  }

  /** The word of {@code --format}. */
  public String word() {
    return word;
  }

  /** What it is called on a page. */
  public String label() {
    return switch (this) {
      case TABLE -> "text";
      case MARKDOWN -> "Markdown";
      case XLSX -> "workbook";
      default -> word.toUpperCase(java.util.Locale.ROOT);
    };
  }

  /** The media type of a response. */
  public String contentType() {
    return contentType;
  }

  /** The ending of addresses and files. */
  public String ending() {
    return ending;
  }

  /** The format that this word of {@code --format} means. */
  public static Optional<OutputFormat> ofWord(String word) {
    return Arrays.stream(values()).filter(format -> format.word.equals(word)).findFirst();
  }

  /** The format that this ending means. */
  public static Optional<OutputFormat> ofEnding(String ending) {
    return Arrays.stream(values()).filter(format -> format.ending.equals(ending)).findFirst();
  }

  /** Whether it is text, which a terminal can show. */
  public boolean isText() {
    return this != XLSX;
  }

  /**
   * Writes an answer; text in UTF-8, with the same line ends everywhere. The stream stays open.
   *
   * @param style what a terminal can show; other formats do not ask
   * @throws UncheckedIOException when it cannot be written
   */
  public void write(Answer<?> answer, OutputStream out, TerminalStyle style) {
    try {
      if (this == XLSX) {
        WorkbookAnswer.write(answer, out);
      } else {
        out.write(text(answer, style).getBytes(StandardCharsets.UTF_8));
      }
      out.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * An answer as text.
   *
   * @throws IllegalStateException when the format is no text
   */
  public String text(Answer<?> answer, TerminalStyle style) {
    StringWriter text = new StringWriter();
    PrintWriter out = new UnixLines(text);
    switch (this) {
      case TABLE -> new TerminalTable(style).write(answer, out);
      case JSON -> JsonAnswer.write(answer, out);
      case CSV -> CsvAnswer.write(answer, out);
      case MARKDOWN -> MarkdownAnswer.write(answer, out);
      case HTML -> HtmlAnswer.write(answer, out);
      case XLSX -> throw new IllegalStateException("a workbook is no text");
    }
    out.flush();
    return text.toString();
  }

  /** Ends lines with a line feed whatever the platform's habit. */
  private static final class UnixLines extends PrintWriter {
    UnixLines(StringWriter text) {
      super(text);
    }

    @Override
    public void println() {
      write('\n');
    }
  }
}
