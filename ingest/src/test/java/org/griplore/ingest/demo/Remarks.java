package org.griplore.ingest.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Remarks written by hand for the tables that have a remark column. */
final class Remarks {
  private final Map<String, String> byTestAndModel = new HashMap<>();

  /** Reads {@code demo/remarks.txt}: test, model and remark split by bars, a line each. */
  static Remarks read() {
    Remarks remarks = new Remarks();
    try (InputStream in = Remarks.class.getResourceAsStream("/demo/remarks.txt")) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank())
          .map(line -> line.split("\\|", 3))
          .forEach(
              p -> remarks.byTestAndModel.put(p[0].strip() + "|" + p[1].strip(), p[2].strip()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return remarks;
  }

  /** The remark on a model in a test; empty text where there is none. */
  String of(String test, String model) {
    return Optional.ofNullable(byTestAndModel.get(test + "|" + model)).orElse("");
  }

  /** How many there are. */
  int count() {
    return byTestAndModel.size();
  }

  /** Test and model of each, joined by a bar. */
  Iterable<String> keys() {
    return byTestAndModel.keySet();
  }
}
