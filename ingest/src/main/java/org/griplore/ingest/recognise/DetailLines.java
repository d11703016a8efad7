package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.GridCell;

/**
 * Details that stand as lines above a table or a text: {@code Size: 205/55 R16 91V}, in one cell or
 * in two. The first line that is none is the title.
 *
 * @param byTopic the value's cell by topic; the first line of a topic counts
 * @param title the title's cell; null where there is none
 * @param others lines that are neither
 */
public record DetailLines(Map<String, GridCell> byTopic, GridCell title, List<GridCell> others) {
  /** No details at all. */
  public static final DetailLines NONE = new DetailLines(Map.of(), null, List.of());

  private static final Pattern KEY_AND_VALUE = Pattern.compile("^([^:]{2,40}?)\\s*:\\s*(.*)$");
  private static final int LONGEST_TITLE = 160;

  /** Reads lines from top to bottom. */
  public static DetailLines of(List<List<GridCell>> lines) {
    Map<String, GridCell> byTopic = new LinkedHashMap<>();
    List<GridCell> others = new ArrayList<>();
    GridCell title = null;
    for (List<GridCell> line : lines) {
      Optional<Found> found = found(line);
      if (found.isPresent()) {
        byTopic.putIfAbsent(found.get().topic(), found.get().value());
      } else if (title == null && isTitle(line)) {
        title = line.get(0);
      } else {
        others.addAll(line);
      }
    }
    GridCell named = byTopic.remove("title");
    return new DetailLines(byTopic, named == null ? title : named, others);
  }

  private static boolean isTitle(List<GridCell> line) {
    return line.size() == 1
        && line.get(0).number() == null
        && line.get(0).text().length() <= LONGEST_TITLE;
  }

  /** A detail that was recognised. */
  private record Found(String topic, GridCell value) {}

  private static Optional<Found> found(List<GridCell> line) {
    GridCell first = line.get(0);
    if (line.size() >= 2 && line.size() <= 3) {
      Optional<String> topic = topic(first.text().replaceAll(":\\s*$", ""));
      if (topic.isPresent()) {
        return Optional.of(new Found(topic.get(), line.get(1)));
      }
    }
    Matcher pair = KEY_AND_VALUE.matcher(first.text());
    if (line.size() == 1 && pair.matches() && !pair.group(2).isBlank()) {
      return topic(pair.group(1))
          .map(
              topic ->
                  new Found(
                      topic,
                      new GridCell(
                          first.row(), first.column(), pair.group(2).strip(), null, first.date())));
    }
    return Optional.empty();
  }

  /** The topics that are details of a test. */
  private static Optional<String> topic(String key) {
    return ColumnWords.topic(key)
        .filter(
            topic ->
                switch (topic) {
                  case "test",
                      "date",
                      "source",
                      "source_kind",
                      "title",
                      "size",
                      "season",
                      "vehicle",
                      "vehicle_mass_kg",
                      "venue",
                      "surface_c",
                      "air_c",
                      "reference",
                      "unit" ->
                      true;
                  default -> false;
                });
  }

  /**
   * These lines, with topics that are not here taken from others (a first sheet's, say). A title
   * without details of its own is a table's or sheet's heading: then the earlier title stays.
   */
  public DetailLines orElse(DetailLines earlier) {
    Map<String, GridCell> together = new LinkedHashMap<>(earlier.byTopic);
    together.putAll(byTopic);
    boolean heading = byTopic.isEmpty() && earlier.title != null;
    return new DetailLines(together, title == null || heading ? earlier.title : title, others);
  }
}
