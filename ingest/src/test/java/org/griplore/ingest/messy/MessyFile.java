package org.griplore.ingest.messy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * A file, perhaps with others beside it, and what it truly says.
 *
 * @param family the kind of mess, in a word
 * @param name the file's name
 * @param content its bytes
 * @param beside other files in the same folder by name: details of the test, say
 */
record MessyFile(
    String family, String name, byte[] content, Map<String, byte[]> beside, Truth truth) {

  /** Writes it into an empty folder; the path of the file itself. */
  Path writeTo(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, byte[]> other : beside.entrySet()) {
      Files.write(folder.resolve(other.getKey()), other.getValue());
    }
    return Files.write(folder.resolve(name), content);
  }

  @Override
  public String toString() {
    return family + "/" + name;
  }
}
