package org.griplore.ui.render;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Copies a workbook without the moment it was written: the same contents give the same bytes. */
final class TimelessZip {
  /** The first moment that a zip entry can have. */
  private static final LocalDateTime ANY_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private static final String PROPERTIES = "docProps/core.xml";

  private TimelessZip() {}

  /**
   * Copies a workbook.
   *
   * @param workbook the file as it was written; its writer leaves sizes to the directory at the
   *     end, so it is not read as a stream
   */
  static void copy(Path workbook, OutputStream out) throws IOException {
    ZipOutputStream to = new ZipOutputStream(out, StandardCharsets.UTF_8);
    try (ZipFile from = new ZipFile(workbook.toFile(), StandardCharsets.UTF_8)) {
      for (ZipEntry entry : Collections.list(from.entries())) {
        byte[] bytes = from.getInputStream(entry).readAllBytes();
        ZipEntry timeless = new ZipEntry(entry.getName());
        timeless.setTimeLocal(ANY_TIME);
        to.putNextEntry(timeless);
        to.write(entry.getName().equals(PROPERTIES) ? withoutMoment(bytes) : bytes);
        to.closeEntry();
      }
    }
    to.finish();
  }

  /** Drops when the workbook was made, which no reader needs. */
  private static byte[] withoutMoment(byte[] properties) {
    return new String(properties, StandardCharsets.UTF_8)
        .replaceAll("(?s)<dcterms:(created|modified)[^>]*>.*?</dcterms:\\1>", "")
        .getBytes(StandardCharsets.UTF_8);
  }
}
