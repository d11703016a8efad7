package org.griplore.ingest.grid.text;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Decides how a text is encoded: by its byte order mark, by zero bytes in every other place
 * (UTF-16), UTF-8 when all of it is, by what a page says of itself, else Windows-1252. A text that
 * is whole in none of them is refused with the byte where it breaks: figures and names must not
 * change by guessing.
 */
public final class TextDecoding {
  public static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final int LOOKED_AT = 64 * 1024;
  private static final Pattern DECLARED =
      Pattern.compile("(?i)<meta[^>]{0,200}charset\\s*=\\s*[\"']?([-\\w:]{2,40})");

  private TextDecoding() {}

  /**
   * The encoding of a source.
   *
   * @throws Refusal when it is no text, or in none of the encodings
   */
  public static Charset of(Original original) throws IOException {
    InputStream in = original.content().open();
    return of(original, in.readNBytes(LOOKED_AT), in);
  }

  /**
   * The encoding of a source that is open already.
   *
   * @param beginning its first bytes, 64 KB or more where it has so many
   * @param rest what follows; read to its end and closed
   * @throws Refusal when it is no text, or in none of the encodings
   */
  public static Charset of(Original original, byte[] beginning, InputStream rest)
      throws IOException {
    byte[] start = Arrays.copyOf(beginning, Math.min(beginning.length, LOOKED_AT));
    InputStream whole = new SequenceInputStream(new ByteArrayInputStream(beginning), rest);
    Charset marked = byMark(start);
    Charset wide = marked != null ? marked : byZeros(start);
    if (wide != null) {
      long broken = ByteCheck.of(whole, wide).firstBroken();
      if (broken >= 0) {
        throw notWhole(original.name(), wide, broken);
      }
      return wide;
    }
    refuseBinary(original.name(), start);
    return narrow(original, start, whole);
  }

  private static Charset narrow(Original original, byte[] start, InputStream whole)
      throws IOException {
    ByteCheck utf8 = ByteCheck.of(whole, StandardCharsets.UTF_8);
    if (utf8.firstBroken() < 0) {
      return StandardCharsets.UTF_8;
    }
    Charset declared = declared(start);
    if (declared != null) {
      return declared;
    }
    // Sequences that are UTF-8 by accident are rare in Windows-1252 text: these bytes are broken.
    if (utf8.sequences() > utf8.broken()) {
      throw notWhole(original.name(), StandardCharsets.UTF_8, utf8.firstBroken());
    }
    long undefined = ByteCheck.of(original.content().open(), WINDOWS_1252).firstBroken();
    if (undefined >= 0) {
      throw new Refusal(
          "%s is text in no encoding known here: UTF-8 breaks at byte %d, Windows-1252 at byte %d; expected text saved as UTF-8."
              .formatted(original.name(), utf8.firstBroken() + 1, undefined + 1),
          new Problem(
              original.name() + ", byte " + (undefined + 1), "an undefined byte", "UTF-8 text"));
    }
    return WINDOWS_1252;
  }

  private static Refusal notWhole(String name, Charset charset, long offset) {
    return new Refusal(
        "%s is %s, but byte %d does not fit in: save it anew as UTF-8."
            .formatted(name, charset.name(), offset + 1),
        new Problem(name + ", byte " + (offset + 1), "a broken character", charset.name()));
  }

  private static Charset byMark(byte[] start) {
    if (begins(start, 0xef, 0xbb, 0xbf)) {
      return StandardCharsets.UTF_8;
    }
    if (begins(start, 0xff, 0xfe)) {
      return StandardCharsets.UTF_16LE;
    }
    return begins(start, 0xfe, 0xff) ? StandardCharsets.UTF_16BE : null;
  }

  private static boolean begins(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xff) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Text of mostly Latin letters in UTF-16 has zeros in one of every two bytes and hardly any in
   * the other.
   */
  private static Charset byZeros(byte[] start) {
    int even = 0;
    int odd = 0;
    for (int i = 0; i < start.length; i++) {
      if (start[i] == 0) {
        even += i % 2 == 0 ? 1 : 0;
        odd += i % 2 == 1 ? 1 : 0;
      }
    }
    int half = start.length / 2;
    if (half < 4) {
      return null;
    }
    if (odd > 0.6 * half && even * 20 < odd) {
      return StandardCharsets.UTF_16LE;
    }
    return even > 0.6 * half && odd * 20 < even ? StandardCharsets.UTF_16BE : null;
  }

  private static void refuseBinary(String name, byte[] start) {
    int control = 0;
    for (int i = 0; i < start.length; i++) {
      if (start[i] == 0) {
        throw new Refusal(
            "%s is no text: byte %d is zero; expected a table, a page, JSON or notes."
                .formatted(name, i + 1),
            new Problem(name + ", byte " + (i + 1), "a zero byte", "text"));
      }
      int value = start[i] & 0xff;
      control += value < 32 && value != 9 && value != 10 && value != 13 && value != 12 ? 1 : 0;
    }
    if (control > start.length / 50 + 1) {
      throw new Refusal(
          "%s is no text: %d of its first %d bytes are control codes; expected a table, a page, JSON or notes."
              .formatted(name, control, start.length),
          new Problem(name, control + " control codes", "text"));
    }
  }

  /** What a page says of its encoding; null where it says nothing or nothing known. */
  private static Charset declared(byte[] start) {
    String text = new String(start, 0, Math.min(start.length, 8192), StandardCharsets.ISO_8859_1);
    Matcher meta = DECLARED.matcher(text);
    if (!meta.find() || !MarkupStart.isHtml(text)) {
      return null;
    }
    boolean known = isKnown(meta.group(1));
    return known && !meta.group(1).toLowerCase(java.util.Locale.ROOT).startsWith("utf")
        ? asBrowsersDo(Charset.forName(meta.group(1)))
        : null;
  }

  private static boolean isKnown(String name) {
    return !name.startsWith("-") && !name.contains(":") && Charset.isSupported(name);
  }

  /** What calls itself Latin-1 is Windows-1252 (WHATWG Encoding Standard, labels). */
  private static Charset asBrowsersDo(Charset charset) {
    return charset.equals(StandardCharsets.ISO_8859_1) || charset.equals(StandardCharsets.US_ASCII)
        ? WINDOWS_1252
        : charset;
  }

  /** Opens a text behind its byte order mark. */
  public static Reader open(Original original, Charset charset) throws IOException {
    Reader reader = new InputStreamReader(original.content().open(), charset);
    if (!charset.name().startsWith("UTF-")) {
      return reader;
    }
    PushbackReader marked = new PushbackReader(reader, 1);
    int first = marked.read();
    if (first >= 0 && first != '\ufeff') {
      marked.unread(first);
    }
    return marked;
  }
}
