package org.griplore.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.griplore.ingest.forms.ReductionSettings;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.store.vocabulary.Refusal;

/**
 * Details that stand in a file beside a source: {@code NAME.details} for one file, or {@code
 * .details} for all of a folder, with a {@code key: value} on each line.
 */
final class Sidecar {
  static final String ENDING = ".details";

  private static final Pattern UNIT = Pattern.compile("unit [a-z][a-z-]*");

  private final Map<String, String> details = new HashMap<>();

  private Sidecar() {}

  /** The details beside a file; none when there is no such file. */
  static Sidecar beside(Path file) {
    Sidecar sidecar = new Sidecar();
    sidecar.read(file.resolveSibling(ENDING));
    sidecar.read(file.resolveSibling(file.getFileName() + ENDING));
    return sidecar;
  }

  private void read(Path file) {
    if (!Files.isRegularFile(file)) {
      return;
    }
    try {
      List<List<GridCell>> lines = new ArrayList<>();
      int number = 0;
      for (String line : Files.readAllLines(file)) {
        number++;
        if (!line.isBlank() && !isSetting(line)) {
          lines.add(List.of(GridCell.of(number, 1, line.strip())));
        }
      }
      DetailLines found = DetailLines.of(lines);
      found.byTopic().forEach((topic, cell) -> details.put(topic, cell.text()));
      if (found.title() != null || !found.others().isEmpty()) {
        GridCell odd = found.title() != null ? found.title() : found.others().get(0);
        throw new Refusal(
            "%s, line %d: \"%s\" is no detail; expected a line like `Size: 205/55 R16 91V`."
                .formatted(file, odd.row(), odd.text()));
      }
    } catch (IOException e) {
      throw new Refusal(file + " cannot be read: expected text in UTF-8.", e);
    }
  }

  /** How a log is to be reduced, and the unit of one discipline, may stand there too. */
  private boolean isSetting(String line) {
    int colon = line.indexOf(':');
    String topic = colon < 0 ? "" : line.substring(0, colon).strip().toLowerCase(Locale.ROOT);
    if (!ReductionSettings.isTopic(topic) && !UNIT.matcher(topic).matches()) {
      return false;
    }
    details.put(topic, line.substring(colon + 1).strip());
    return true;
  }

  /** These details, with what the user said counting first. */
  ReadOptions fill(ReadOptions options) {
    Map<String, String> together = new HashMap<>(details);
    together.putAll(options.details());
    return new ReadOptions(together, options.detailsFirst(), options.map());
  }
}
