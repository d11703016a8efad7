package org.griplore.query.network;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.griplore.store.OutsideData;
import org.junit.jupiter.api.Assumptions;

/** A published or computed case: rows of its tables by column name. */
final class ReferenceCase {
  private final Map<String, Double> expected = new HashMap<>();
  private final String name;

  private ReferenceCase(String name) {
    this.name = name;
  }

  static ReferenceCase carried(String name) {
    ReferenceCase c = new ReferenceCase(name);
    for (Map<String, String> row : table(name + "/expected.csv")) {
      c.keep(row);
    }
    return c;
  }

  /**
   * A case that is not carried with the project; the calling test is skipped where it is absent.
   */
  static ReferenceCase outside(String folder) {
    ReferenceCase c = new ReferenceCase(folder);
    for (Map<String, String> row : outsideTable(folder, "expected.csv")) {
      c.keep(row);
    }
    return c;
  }

  static List<Map<String, String>> outsideTable(String folder, String file) {
    Path path = OutsideData.folder("reference/" + folder).map(at -> at.resolve(file)).orElse(null);
    if (path == null || !Files.isRegularFile(path)) {
      Assumptions.abort("The reference case " + folder + " is not on this machine.");
    }
    try {
      return rows(Files.readString(path, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Map<String, String>> table(String file) {
    try (InputStream in = ReferenceCase.class.getResourceAsStream("/reference/" + file)) {
      return rows(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Map<String, String>> rows(String text) {
    List<Map<String, String>> rows = new ArrayList<>();
    String[] head = null;
    for (String line : text.split("\r?\n")) {
      if (line.startsWith("#") || line.isBlank()) {
        continue;
      }
      String[] cells = line.replace("\"", "").split(",", -1);
      if (head == null) {
        head = cells;
        continue;
      }
      Map<String, String> row = new HashMap<>();
      for (int i = 0; i < head.length; i++) {
        row.put(head[i], cells[i]);
      }
      rows.add(row);
    }
    return rows;
  }

  private void keep(Map<String, String> row) {
    expected.put(
        key(row.get("quantity"), row.get("key1"), row.get("key2")),
        Double.valueOf(row.get("value")));
  }

  boolean has(String quantity, String key1, String key2) {
    return expected.containsKey(key(quantity, key1, key2));
  }

  double value(String quantity, String key1, String key2) {
    Double value = expected.get(key(quantity, key1, key2));
    if (value == null) {
      throw new IllegalArgumentException(name + " has no " + key(quantity, key1, key2));
    }
    return value;
  }

  void check(double actual, String quantity, String key1, String key2, double relative) {
    double wanted = value(quantity, key1, key2);
    Assertions.assertThat(actual)
        .as("%s %s", name, key(quantity, key1, key2))
        .isCloseTo(wanted, Assertions.within(relative * Math.max(Math.abs(wanted), 1e-6)));
  }

  private static String key(String quantity, String key1, String key2) {
    return quantity + " " + key1 + " " + key2;
  }
}
