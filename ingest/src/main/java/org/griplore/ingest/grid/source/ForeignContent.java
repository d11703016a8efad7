package org.griplore.ingest.grid.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Contents that are known and not read: what they are and what to do. */
final class ForeignContent {
  /** An encrypted workbook names this stream in its directory, in UTF-16 (MS-OFFCRYPTO 2.3.4). */
  private static final byte[] ENCRYPTED = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

  private static final int LOOKED_AT_FOR_ENCRYPTION = 64 << 20;

  private ForeignContent() {}

  /** Whether a source is one of them. */
  static boolean is(Original original) throws IOException {
    return what(original) != null;
  }

  /**
   * Refuses a source that is one of them.
   *
   * @throws Refusal that says what it is and what to do
   */
  static void refuse(Original original) throws IOException {
    String what = what(original);
    if (what != null) {
      throw new Refusal(
          original.name() + " is " + what + ".",
          new Problem(original.name(), what, "a table, a page, JSON or notes"));
    }
  }

  private static String what(Original original) throws IOException {
    byte[] head;
    try (InputStream in = original.content().open()) {
      head = in.readNBytes(16);
    }
    String ascii = new String(head, StandardCharsets.ISO_8859_1);
    if (ascii.startsWith("\u00d0\u00cf\u0011\u00e0")) {
      return isEncrypted(original)
          ? "a workbook with a password: save it without one"
          : "a workbook or document of the old binary form: save it as XLSX";
    }
    if (ascii.startsWith("%PDF")) {
      return "a PDF: copy its table into a CSV file or paste it";
    }
    if (ascii.startsWith("\u0089PNG")
        || ascii.startsWith("\u00ff\u00d8\u00ff")
        || ascii.startsWith("GIF8")) {
      return "a picture: type its table into a CSV file";
    }
    if (ascii.startsWith("\u001f\u008b")
        || ascii.startsWith("7z\u00bc\u00af")
        || ascii.startsWith("Rar!")) {
      return "a packed file: unpack it first";
    }
    if (ascii.startsWith("SQLite format")) {
      return "a database: export its table as CSV";
    }
    return ascii.startsWith("{\\rtf") ? "a rich-text document: save it as plain text" : null;
  }

  private static boolean isEncrypted(Original original) throws IOException {
    byte[] bytes;
    try (InputStream in = original.content().open()) {
      bytes = in.readNBytes(LOOKED_AT_FOR_ENCRYPTION);
    }
    for (int i = 0; i + ENCRYPTED.length <= bytes.length; i++) {
      if (java.util.Arrays.equals(bytes, i, i + ENCRYPTED.length, ENCRYPTED, 0, ENCRYPTED.length)) {
        return true;
      }
    }
    return false;
  }
}
