package org.griplore.ingest.reduce;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A folder of {@code reference/}: data and the results that packages or papers give for them. */
record ReferenceCase(String folder) {
  /** The data's rows without their header, unquoted. */
  List<String[]> data() {
    return rows("data.csv");
  }

  /** An expected value. */
  double expected(String quantity, String key) {
    return rows("expected.csv").stream()
        .filter(row -> row[0].equals(quantity) && row[1].equals(key))
        .mapToDouble(row -> Double.parseDouble(row[3]))
        .findFirst()
        .orElseThrow(() -> new AssertionError(folder + " has no " + quantity + " " + key));
  }

  double expected(String quantity) {
    return expected(quantity, "");
  }

  private List<String[]> rows(String file) {
    String path = "/reference/" + folder + "/" + file;
    try (InputStream in = ReferenceCase.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.replace("\"", "").split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
