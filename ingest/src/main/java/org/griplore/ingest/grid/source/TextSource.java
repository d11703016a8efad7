package org.griplore.ingest.grid.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.json.JsonReader;
import org.griplore.ingest.grid.markup.HtmlReader;
import org.griplore.ingest.grid.markup.MarkdownReader;
import org.griplore.ingest.grid.text.Conversation;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.DelimiterFinder;
import org.griplore.ingest.grid.text.FixedWidthText;
import org.griplore.ingest.grid.text.MarkupStart;
import org.griplore.ingest.grid.text.PlainText;
import org.griplore.ingest.grid.text.StackedText;
import org.griplore.ingest.grid.text.TextDecoding;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A source that is text: a page, JSON, a delimited or aligned table, Markdown or notes.
 *
 * @param original the source
 * @param charset how it is encoded
 * @param start its beginning
 */
record TextSource(Original original, Charset charset, String start) {
  private static final int LINES_LOOKED_AT = 60;
  private static final Pattern COMMA_BETWEEN_FIELDS = Pattern.compile("(?<!\\d),(?! )|,(?![\\d ])");

  Content read() throws IOException {
    if (start.isBlank()) {
      throw new Refusal(
          original.name() + " holds nothing but empty lines.",
          new Problem(original.name(), "empty lines", "a table, a page, JSON or notes"));
    }
    if (MarkupStart.isHtml(start)) {
      return new Content.Tables("page", HtmlReader.read(original, charset));
    }
    if (isJson()) {
      return new Content.Tables("JSON", JsonReader.read(original, charset));
    }
    Optional<DelimitedText> delimited = delimited();
    return delimited.isPresent()
        ? new Content.Tables("delimited text", List.of(delimited.get().grid()))
        : lines();
  }

  /**
   * A document's paragraphs read as a text of so many lines, which may be a table of its own;
   * tables as they are.
   */
  static Content lines(Original original, Content content) throws IOException {
    if (!(content instanceof Content.Prose prose)) {
      return content;
    }
    StringBuilder text = new StringBuilder();
    int line = 1;
    for (Content.Line each : prose.lines()) {
      text.append("\n".repeat(Math.max(0, each.number() - line))).append(each.text());
      line = each.number();
    }
    if (text.toString().isBlank()) {
      throw new Refusal(
          original.name() + " is a document without tables and without text.",
          new Problem(original.name(), "an empty document", "a table or notes"));
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    Original lines =
        new Original(
            original.origin(),
            original.name(),
            original.sha256(),
            bytes.length,
            () -> new ByteArrayInputStream(bytes));
    String start = text.substring(0, Math.min(text.length(), DelimitedText.CHARACTERS_LOOKED_AT));
    return new TextSource(lines, StandardCharsets.UTF_8, start).read();
  }

  /** The text as delimited text; empty when it is something else. */
  Optional<DelimitedText> delimited() throws IOException {
    if (MarkupStart.isHtml(start) || isJson()) {
      return Optional.empty();
    }
    List<String> lines = start.lines().toList();
    if (MarkdownReader.hasTable(lines) || isConversation(lines)) {
      return Optional.empty();
    }
    boolean brokenOff = start.length() >= DelimitedText.CHARACTERS_LOOKED_AT;
    return DelimiterFinder.find(start, brokenOff)
        .filter(candidate -> candidate.delimiter() != ',' || !isAligned(lines) && !isStacked(lines))
        .filter(candidate -> candidate.isPlain() || !hasMarkdownMarks(lines))
        .map(candidate -> new DelimitedText(original, charset, candidate.delimiter()));
  }

  private boolean isJson() {
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
        || lines.stream().limit(LINES_LOOKED_AT).filter(line -> line.matches("\\s*[-*] .*")).count()
            > 2;
  }

  private Content lines() throws IOException {
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
    return Conversation.read(lines)
        .or(() -> FixedWidthText.read(lines))
        .or(() -> StackedText.read(lines))
        .orElseGet(() -> new Content.Prose(lines));
  }

  private static boolean isConversation(List<String> lines) {
    return Conversation.read(numbered(lines)).isPresent();
  }

  /** Whether commas stand inside figures only, in a table whose columns are parted by blanks. */
  private static boolean isAligned(List<String> lines) {
    return lines.stream().limit(LINES_LOOKED_AT).noneMatch(COMMA_BETWEEN_FIELDS.asPredicate())
        && FixedWidthText.read(numbered(lines)).isPresent();
  }

  /** Whether commas stand inside figures only, in a table of one cell a line. */
  private boolean isStacked(List<String> lines) {
    return start.length() < DelimitedText.CHARACTERS_LOOKED_AT
        && lines.stream().noneMatch(COMMA_BETWEEN_FIELDS.asPredicate())
        && StackedText.read(numbered(lines, lines.size())).isPresent();
  }

  private static List<Content.Line> numbered(List<String> lines) {
    return numbered(lines, LINES_LOOKED_AT);
  }

  private static List<Content.Line> numbered(List<String> lines, int most) {
    List<Content.Line> numbered = new ArrayList<>();
    for (String line : lines.subList(0, Math.min(lines.size(), most))) {
      numbered.add(new Content.Line(numbered.size() + 1, line));
    }
    return numbered;
  }
}
