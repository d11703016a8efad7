package org.griplore.ingest.grid.packed;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Counts what a packed file unpacks to, while it is unpacked: headers are never believed. What is
 * far more than documents of tables ever are is refused.
 */
final class Unpacking {
  private static final long MOST_BYTES = 512L << 20;
  private static final long RATIO_FROM_BYTES = 10L << 20;
  private static final int HIGHEST_RATIO = 200;
  private static final int MOST_PARTS = 2000;

  private final String name;
  private final long packed;
  private long unpacked;

  Unpacking(String name, long packed) {
    this.name = name;
    this.packed = packed;
  }

  void parts(int count) {
    if (count > MOST_PARTS) {
      throw refusal("more than " + MOST_PARTS + " parts");
    }
  }

  InputStream counted(InputStream in) {
    return new FilterInputStream(in) {
      @Override
      public int read() throws IOException {
        int c = in.read();
        count(c < 0 ? 0 : 1);
        return c;
      }

      @Override
      public int read(byte[] bytes, int offset, int length) throws IOException {
        int read = in.read(bytes, offset, length);
        count(Math.max(0, read));
        return read;
      }

      @Override
      public boolean markSupported() {
        return false;
      }
    };
  }

  private void count(int bytes) {
    unpacked += bytes;
    if (unpacked > MOST_BYTES) {
      throw refusal("more than 512 MB");
    }
    if (unpacked > RATIO_FROM_BYTES && unpacked / HIGHEST_RATIO > packed) {
      throw refusal("more than " + HIGHEST_RATIO + " times its size");
    }
  }

  private Refusal refusal(String what) {
    return new Refusal(
        name + " would unpack to " + what + ": it is not read.",
        new Problem(name, what, "documents of tables"));
  }
}
