package org.griplore.ingest.messy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs parts into one file, in their order; a part named {@code mimetype} is kept unpacked. */
final class PackedParts {
  private PackedParts() {}

  static byte[] zip(Map<String, byte[]> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTime(0);
        if (part.getKey().equals("mimetype")) {
          CRC32 sum = new CRC32();
          sum.update(part.getValue());
          entry.setMethod(ZipEntry.STORED);
          entry.setSize(part.getValue().length);
          entry.setCrc(sum.getValue());
        }
        zip.putNextEntry(entry);
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
