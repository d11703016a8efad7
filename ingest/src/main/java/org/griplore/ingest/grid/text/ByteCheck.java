package org.griplore.ingest.grid.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;

/**
 * Whether all bytes of a source are text of an encoding; the source is read through once.
 *
 * @param firstBroken offset from 0 of the first bytes that are not; -1 when all are
 * @param broken how many places are not
 * @param sequences how many characters beyond ASCII are
 */
record ByteCheck(long firstBroken, long broken, long sequences) {
  /** Checks a stream to its end, and closes it. */
  static ByteCheck of(InputStream content, Charset charset) throws IOException {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.allocate(1 << 16);
    CharBuffer chars = CharBuffer.allocate(1 << 16);
    long before = 0;
    long first = -1;
    long broken = 0;
    long sequences = 0;
    try (InputStream in = content) {
      boolean end = false;
      while (!end) {
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        end = read < 0;
        bytes.position(bytes.position() + Math.max(0, read)).flip();
        CoderResult result;
        do {
          chars.clear();
          result = decoder.decode(bytes, chars, end);
          sequences += beyondAscii(chars.flip());
          if (result.isError()) {
            first = first < 0 ? before + bytes.position() : first;
            broken++;
            bytes.position(bytes.position() + result.length());
          }
        } while (!result.isUnderflow());
        before += bytes.position();
        bytes.compact();
      }
    }
    return new ByteCheck(first, broken, sequences);
  }

  private static long beyondAscii(CharBuffer chars) {
    long count = 0;
    char[] array = chars.array();
    for (int i = 0; i < chars.limit(); i++) {
      count += array[i] > 127 ? 1 : 0;
    }
    return count;
  }
}
