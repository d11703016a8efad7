package org.griplore.ui.render;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Optional;
import org.griplore.query.answer.Answer;

/** The renderings to choose from. */
public enum OutputFormat {
  TABLE("table", "text/plain;charset=utf-8", "txt"),
  JSON("json", "application/json;charset=utf-8", "json"),
  CSV("csv", "text/csv;charset=utf-8", "csv"),
  MARKDOWN("markdown", "text/markdown;charset=utf-8", "md");

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

  /** Writes an answer. */
  public void write(Answer<?> answer, PrintWriter out, TerminalStyle style) {
    switch (this) {
      case TABLE -> new TerminalTable(style).write(answer, out);
      case JSON -> JsonAnswer.write(answer, out);
      case CSV -> CsvAnswer.write(answer, out);
      case MARKDOWN -> MarkdownAnswer.write(answer, out);
    }
    out.flush();
  }
}
