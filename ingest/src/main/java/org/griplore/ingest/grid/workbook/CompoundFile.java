package org.griplore.ingest.grid.workbook;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** What a compound file is, by the streams in it (MS-CFB), where it is no workbook that is read. */
final class CompoundFile {
  /** It is held in memory some twenty times as large as it is saved. */
  private static final long MOST_BYTES = 32L << 20;

  /** An encrypted workbook names this stream in its directory, in UTF-16 (MS-OFFCRYPTO 2.3.4). */
  private static final String ENCRYPTED = "EncryptedPackage";

  private static final byte[] ENCRYPTED_BYTES = ENCRYPTED.getBytes(StandardCharsets.UTF_16LE);

  private static final Map<String, String> OTHERS =
      Map.of(
          "WordDocument", "a text document of the old binary form: save it as DOCX",
          "PowerPoint Document", "a presentation: copy its tables into a workbook",
          "__properties_version1.0", "a letter of the form MSG: save it as EML");

  private CompoundFile() {}

  static void refuseLarge(Original original) {
    if (original.bytes() > MOST_BYTES) {
      throw new Refusal(
          "%s is a workbook of the old binary form and more than %d MB: save it as XLSX."
              .formatted(original.name(), MOST_BYTES >> 20),
          new Problem(original.name(), original.bytes() + " bytes", "a smaller workbook"));
    }
  }

  /**
   * Refuses what is no workbook that is read.
   *
   * @throws Refusal that says what it is
   */
  static void refuseOther(String name, DirectoryNode root) {
    if (root.hasEntry(ENCRYPTED)) {
      throw password(name);
    }
    if (root.hasEntry("Workbook") || root.hasEntry("Book") || root.hasEntry("BOOK")) {
      return;
    }
    for (Map.Entry<String, String> other : OTHERS.entrySet()) {
      if (root.hasEntry(other.getKey())) {
        throw refusal(name, other.getValue());
      }
    }
    throw refusal(name, "a document of the old binary form: save it as XLSX");
  }

  static Refusal password(String name) {
    return refusal(name, "a workbook with a password: save it without one");
  }

  static Refusal old(String name) {
    return refusal(name, "a workbook of Excel 95 or older: save it as XLSX");
  }

  private static Refusal refusal(String name, String what) {
    return new Refusal(
        name + " is " + what + ".", new Problem(name, what, "a table, a page, JSON or notes"));
  }

  /** Whether a file that cannot be opened names an encrypted package all the same. */
  static boolean isEncrypted(byte[] bytes) {
    int length = ENCRYPTED_BYTES.length;
    for (int i = 0; i + length <= bytes.length; i++) {
      if (bytes[i] == ENCRYPTED_BYTES[0]
          && Arrays.equals(bytes, i, i + length, ENCRYPTED_BYTES, 0, length)) {
        return true;
      }
    }
    return false;
  }
}
