package org.griplore.ingest.grid.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.markup.RtfReader;
import org.griplore.ingest.grid.packed.LetterReader;
import org.griplore.ingest.grid.print.PdfReader;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.TextDecoding;
import org.griplore.ingest.grid.workbook.OpenDocumentReader;
import org.griplore.ingest.grid.workbook.SpreadsheetXml;
import org.griplore.ingest.grid.workbook.XlsReader;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A source that was looked at once: what it is, and for a text its encoding and beginning. It is
 * opened once for that and once for reading.
 */
public final class Document {
  private static final int BYTES_LOOKED_AT = 2 * DelimitedText.CHARACTERS_LOOKED_AT;

  private final Original original;
  private final ContentKind kind;
  private final byte[] head;
  private final Charset charset;
  private final TextSource text;

  private Document(Original original, ContentKind kind, byte[] head, Charset charset) {
    this.original = original;
    this.kind = kind;
    this.head = kind == ContentKind.FOREIGN ? head : null;
    this.charset = charset;
    this.text = charset == null ? null : new TextSource(original, charset, start(head, charset));
  }

  /**
   * Looks at a source.
   *
   * @throws Refusal when it is empty, or text in no known encoding
   */
  public static Document of(Original original) {
    if (original.bytes() == 0) {
      throw new Refusal(
          original.name() + " is empty.",
          new Problem(original.name(), "0 bytes", "a table, a page, JSON or notes"));
    }
    try (InputStream in = original.content().open()) {
      byte[] head = in.readNBytes(BYTES_LOOKED_AT);
      ContentKind kind = ContentKind.of(head);
      Charset charset = kind == ContentKind.TEXT ? TextDecoding.of(original, head, in) : null;
      return new Document(original, kind, head, charset);
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  private static String start(byte[] head, Charset charset) {
    try (Reader reader = new InputStreamReader(new ByteArrayInputStream(head), charset)) {
      String text = DelimitedText.start(reader);
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (IOException e) {
      throw new IllegalStateException("bytes in memory can be read", e);
    }
  }

  /** How its text is encoded; empty for a workbook and other contents that are no plain text. */
  public Optional<Charset> encoding() {
    return Optional.ofNullable(charset);
  }

  /** The source as delimited text, for reading it row by row; empty when it is something else. */
  public Optional<DelimitedText> delimited() {
    try {
      return text == null ? Optional.empty() : text.delimited();
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  /**
   * Reads it.
   *
   * @throws Refusal when it is damaged, dangerous or nothing that can be read
   */
  public Content content() {
    try {
      return switch (kind) {
        case PACKED -> PackedSource.read(original);
        case COMPOUND -> XlsReader.read(original);
        case SPREADSHEET_XML -> SpreadsheetXml.read(original);
        case FLAT_OPEN_DOCUMENT -> OpenDocumentReader.readFlat(original);
        case TEXT -> text.read();
        case FOREIGN ->
            throw ForeignContent.refusal(
                original.name(),
                ForeignContent.what(new String(head, StandardCharsets.ISO_8859_1)));
        case OTHER_XML ->
            throw ForeignContent.refusal(
                original.name(), "XML of a kind that is not read: save it as CSV, XLSX or a page");
        case PDF -> PdfReader.read(original);
        case RICH_TEXT -> TextSource.lines(original, RtfReader.read(original));
        case LETTER -> letter();
      };
    } catch (IOException e) {
      throw unreadable(original, e);
    }
  }

  /** A letter that is nothing but its body is read as that. */
  private Content letter() throws IOException {
    Content.Members members = LetterReader.read(original);
    Original first = members.members().get(0);
    return members.members().size() == 1 && LetterReader.isBody(original, first)
        ? Document.of(first).content()
        : members;
  }

  static Refusal unreadable(Original original, IOException cause) {
    return new Refusal(original.name() + " cannot be read: " + cause.getMessage() + ".", cause);
  }
}
