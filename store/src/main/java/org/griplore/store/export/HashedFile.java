package org.griplore.store.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A new file that knows its length and hash when it is closed. */
final class HashedFile extends OutputStream {
  private final DigestOutputStream out;
  private long bytes;

  HashedFile(Path file) throws IOException {
    try {
      out =
          new DigestOutputStream(Files.newOutputStream(file), MessageDigest.getInstance("SHA-256"));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  @Override
  public void write(int b) throws IOException {
    out.write(b);
    bytes++;
  }

  @Override
  public void write(byte[] from, int offset, int length) throws IOException {
    out.write(from, offset, length);
    bytes += length;
  }

  @Override
  public void flush() throws IOException {
    out.flush();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  long bytes() {
    return bytes;
  }

  String sha256() {
    try {
      return HexFormat.of().formatHex(((MessageDigest) out.getMessageDigest().clone()).digest());
    } catch (CloneNotSupportedException e) {
      throw new UncheckedIOException(new IOException("the hash cannot be told", e));
    }
  }
}
