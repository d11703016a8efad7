package org.griplore.ingest.grid;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Decides how a text is encoded: by its byte order mark, by zero bytes in every other place
 * (UTF-16), UTF-8 when all of it is, else Windows-1252.
 */
final class TextDecoding {
  static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final int LOOKED_AT = 64 * 1024;

  private TextDecoding() {}

  /** The encoding of a source. */
  static Charset of(Original original) throws IOException {
    byte[] start;
    try (InputStream in = original.content().open()) {
      start = in.readNBytes(LOOKED_AT);
    }
    Charset marked = byMark(start);
    if (marked != null) {
      return marked;
    }
    Charset wide = byZeros(start);
    if (wide != null) {
      return wide;
    }
    refuseBinary(original.name(), start);
    return isUtf8(original) ? StandardCharsets.UTF_8 : WINDOWS_1252;
  }

  private static Charset byMark(byte[] start) {
    if (start.length >= 3
        && (start[0] & 0xff) == 0xef
        && (start[1] & 0xff) == 0xbb
        && (start[2] & 0xff) == 0xbf) {
      return StandardCharsets.UTF_8;
    }
    if (start.length >= 2 && (start[0] & 0xff) == 0xff && (start[1] & 0xff) == 0xfe) {
      return StandardCharsets.UTF_16LE;
    }
    if (start.length >= 2 && (start[0] & 0xff) == 0xfe && (start[1] & 0xff) == 0xff) {
      return StandardCharsets.UTF_16BE;
    }
    return null;
  }

  /** Text of mostly Latin letters in UTF-16 has zeros in one of every two bytes. */
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
    if (half >= 4 && odd > 0.6 * half && even == 0) {
      return StandardCharsets.UTF_16LE;
    }
    return half >= 4 && even > 0.6 * half && odd == 0 ? StandardCharsets.UTF_16BE : null;
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

  private static boolean isUtf8(Original original) throws IOException {
    try (InputStream in = new BufferedInputStream(original.content().open())) {
      var decoder =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT);
      byte[] bytes = new byte[1 << 16];
      java.nio.CharBuffer chars = java.nio.CharBuffer.allocate(1 << 16);
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      buffer.limit(0);
      while (true) {
        int kept = buffer.remaining();
        System.arraycopy(bytes, buffer.position(), bytes, 0, kept);
        int read = in.read(bytes, kept, bytes.length - kept);
        buffer.position(0).limit(kept + Math.max(0, read));
        chars.clear();
        var result = decoder.decode(buffer, chars, read < 0);
        if (result.isError()) {
          return false;
        }
        if (read < 0) {
          return true;
        }
      }
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  /** Opens a text behind its byte order mark. */
  static Reader open(Original original, Charset charset) throws IOException {
    Reader reader = new InputStreamReader(original.content().open(), charset);
    if (charset != WINDOWS_1252) {
      java.io.PushbackReader marked = new java.io.PushbackReader(reader, 1);
      int first = marked.read();
      if (first >= 0 && first != '\ufeff') {
        marked.unread(first);
      }
      return marked;
    }
    return reader;
  }
}
