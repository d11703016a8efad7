package org.griplore.ingest.grid.source;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.TextDecoding;
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
   * Reads a source into tables, prose or the documents that it holds.
   *
   * @throws Refusal when it is damaged, dangerous, empty or nothing that can be read
   */
  public static Content read(Original original) {
    return Document.of(original).content();
  }

  /**
   * How a source's text is encoded; empty for a workbook and other contents that are no text.
   *
   * @throws Refusal when it is text in no known encoding, or looks binary
   */
  public static Optional<Charset> encoding(Original original) {
    return Document.of(original).encoding();
  }

  /** The source as delimited text, for reading it row by row; empty when it is something else. */
  public static Optional<DelimitedText> delimited(Original original) {
    return original.bytes() == 0 ? Optional.empty() : Document.of(original).delimited();
  }

  /** A text as delimited text, whatever its lines look like. */
  public static DelimitedText cut(Original original, char delimiter) {
    try {
      return new DelimitedText(original, TextDecoding.of(original), delimiter);
    } catch (IOException e) {
      throw Document.unreadable(original, e);
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
      throw Document.unreadable(text.original(), e);
    }
  }
}
