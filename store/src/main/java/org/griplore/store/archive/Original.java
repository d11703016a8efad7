package org.griplore.store.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * The content of a source as it was given.
 *
 * @param origin what the source is known by from one revision to the next: the file's absolute
 *     path, or the name given to a pasted table
 * @param name the name shown: the file's name
 * @param sha256 hash of the content, 64 hexadecimal digits
 * @param bytes its length
 * @param content opens the content anew
 */
public record Original(String origin, String name, String sha256, long bytes, Content content) {
  /** Opens the content for reading from its beginning. */
  public interface Content {
    InputStream open() throws IOException;
  }

  /**
   * A file's content.
   *
   * @throws Refusal when the file cannot be read
   */
  public static Original of(Path file) {
    Path absolute = file.toAbsolutePath().normalize();
    return of(
        absolute.toString(),
        absolute.getFileName() == null ? absolute.toString() : absolute.getFileName().toString(),
        () -> Files.newInputStream(absolute));
  }

  /** A pasted or uploaded content under a name of the user's. */
  public static Original of(String name, byte[] bytes) {
    return of(name, name, () -> new ByteArrayInputStream(bytes));
  }

  /**
   * A content under an origin and a name.
   *
   * @throws Refusal when it cannot be read
   */
  public static Original of(String origin, String name, Content content) {
    try (DigestInputStream in = new DigestInputStream(content.open(), newSha256())) {
      long bytes = in.transferTo(OutputStream.nullOutputStream());
      String hash = HexFormat.of().formatHex(in.getMessageDigest().digest());
      return new Original(origin, name, hash, bytes, content);
    } catch (IOException e) {
      throw new Refusal(
          name + " cannot be read: it is missing or access is denied.",
          e,
          new Problem(origin, "", "a readable file"));
    }
  }

  /** Reads the whole content. */
  public byte[] readAll() {
    try (InputStream in = content.open()) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static MessageDigest newSha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
