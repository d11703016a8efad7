package org.griplore.query.statistics;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.OutsideData;
import org.junit.jupiter.api.Assumptions;

/**
 * A case with data, full-precision results and printed results. Lines that begin with # give the
 * citation. Some cases' data is not part of the project; their tests are skipped where it is
 * absent.
 */
public final class ReferenceCase {
  /** One expected figure; {@code decimals} is how many are printed, 0 where not printed. */
  public record Expected(String quantity, String key1, String key2, double value, int decimals) {}

  private interface Folder {
    Optional<String> read(String file);
  }

  private final Folder folder;

  private ReferenceCase(Folder folder) {
    this.folder = folder;
  }

  /** A case carried in the test resources. */
  public static ReferenceCase carried(String name) {
    return new ReferenceCase(
        file -> {
          try (InputStream in =
              ReferenceCase.class.getResourceAsStream("/reference/" + name + "/" + file)) {
            return in == null
                ? Optional.empty()
                : Optional.of(new String(in.readAllBytes(), UTF_8));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  /** A case beside the project, in shared/reference; skips the running test when it is absent. */
  public static ReferenceCase beside(String name) {
    Path found = OutsideData.folder("reference/" + name).orElse(null);
    if (found == null) {
      Assumptions.abort("reference case " + name + " is not at hand");
    }
    return new ReferenceCase(
        file -> {
          try {
            Path path = found.resolve(file);
            return Files.exists(path)
                ? Optional.of(Files.readString(path, UTF_8))
                : Optional.empty();
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  /** The rows of a table by column name. */
  public List<Map<String, String>> table(String file) {
    String text = folder.read(file).orElseThrow(() -> new AssertionError("no " + file));
    List<Map<String, String>> rows = new ArrayList<>();
    List<String> header = null;
    for (String line : text.split("\\R")) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = cells(line);
      if (header == null) {
        header = cells;
        continue;
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < header.size(); i++) {
        row.put(header.get(i), cells.get(i));
      }
      rows.add(row);
    }
    return rows;
  }

  /** The rows of data.csv. */
  public List<Map<String, String>> data() {
    return table("data.csv");
  }

  /** One column of data.csv as numbers. */
  public double[] column(String name) {
    return data().stream().mapToDouble(row -> Double.parseDouble(row.get(name))).toArray();
  }

  /** One column of data.csv as numbers, of the rows where another column has a value. */
  public double[] column(String name, String where, String is) {
    return data().stream()
        .filter(row -> row.get(where).equals(is))
        .mapToDouble(row -> Double.parseDouble(row.get(name)))
        .toArray();
  }

  /** All figures of expected.csv. */
  public List<Expected> expected() {
    return figures("expected.csv");
  }

  /** All figures of published.csv. */
  public List<Expected> published() {
    return figures("published.csv");
  }

  /** All figures of a table with the columns quantity, key1, key2 and value. */
  public List<Expected> figures(String file) {
    return table(file).stream()
        .map(
            row ->
                new Expected(
                    row.get("quantity"),
                    row.get("key1"),
                    row.get("key2"),
                    Double.parseDouble(row.get("value")),
                    Integer.parseInt(row.getOrDefault("decimals", "0"))))
        .toList();
  }

  /** One figure of expected.csv. */
  public double value(String quantity, String... keys) {
    String key1 = keys.length > 0 ? keys[0] : "";
    String key2 = keys.length > 1 ? keys[1] : "";
    return expected().stream()
        .filter(e -> e.quantity.equals(quantity) && e.key1.equals(key1) && e.key2.equals(key2))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + quantity + " " + key1 + " " + key2))
        .value;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
