package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
 * @param repeated values of topics that were told before and otherwise
 */
public record DetailLines(
    Map<String, GridCell> byTopic, GridCell title, List<GridCell> others, List<GridCell> repeated) {
  /** No details at all. */
  public static final DetailLines NONE = new DetailLines(Map.of(), null, List.of(), List.of());

  private static final Pattern KEY_AND_VALUE = Pattern.compile("^([^:]{2,40}?)\\s*:\\s*(.*)$");
  private static final int LONGEST_TITLE = 160;

  /** Reads lines from top to bottom. */
  public static DetailLines of(List<List<GridCell>> lines) {
    Map<String, GridCell> byTopic = new LinkedHashMap<>();
    List<GridCell> others = new ArrayList<>();
    List<GridCell> repeated = new ArrayList<>();
    GridCell title = null;
    for (List<GridCell> line : apart(lines)) {
      Optional<Found> found = found(line);
      if (found.isPresent()) {
        GridCell value = found.get().value();
        GridCell earlier = byTopic.putIfAbsent(found.get().topic(), value);
        if (earlier != null && !earlier.text().equals(value.text())) {
          repeated.add(value);
        }
      } else if (title == null && isTitle(line)) {
        title = line.get(0);
      } else {
        others.addAll(line);
      }
    }
    GridCell named = byTopic.remove("title");
    return new DetailLines(byTopic, named == null ? title : named, others, repeated);
  }

  /** These lines but for some topics, of which something else is known. */
  public DetailLines without(Set<String> topics) {
    Map<String, GridCell> rest = new LinkedHashMap<>(byTopic);
    rest.keySet().removeAll(topics);
    return new DetailLines(rest, topics.contains("title") ? null : title, others, repeated);
  }

  /** Several details in one row of cells are lines of their own. */
  private static List<List<GridCell>> apart(List<List<GridCell>> lines) {
    List<List<GridCell>> apart = new ArrayList<>();
    for (List<GridCell> line : lines) {
      long details = line.stream().filter(cell -> found(List.of(cell)).isPresent()).count();
      if (line.size() > 1 && details > 1) {
        line.forEach(cell -> apart.add(List.of(cell)));
      } else {
        apart.add(line);
      }
    }
    return apart;
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
      String label = first.text().replaceAll(":\\s*$", "");
      boolean parts = line.size() == 2 && !label.contains(":");
      Optional<String> topic = topic(label, line.get(1).text(), parts);
      if (topic.isPresent()) {
        return Optional.of(new Found(topic.get(), line.get(1)));
      }
    }
    Matcher pair = KEY_AND_VALUE.matcher(first.text());
    if (!pair.matches() || pair.group(2).isBlank()) {
      return Optional.empty();
    }
    // A value with a delimiter in it ("Date: June 14, 2021") stands in several cells.
    StringBuilder value = new StringBuilder(pair.group(2).strip());
    line.stream().skip(1).forEach(cell -> value.append(", ").append(cell.text().strip()));
    return topic(pair.group(1), value.toString(), true)
        .map(
            topic ->
                new Found(
                    topic,
                    new GridCell(
                        first.row(), first.column(), value.toString(), null, first.date())));
  }

  /** The topic of a label: a known phrase, or else a word in it where the value is of its kind. */
  private static Optional<String> topic(String key, String value, boolean parts) {
    Optional<String> known = topic(key);
    return known.isPresent() || !parts ? known : DetailLabels.topic(key, value);
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
    return new DetailLines(
        together, title == null || heading ? earlier.title : title, others, repeated);
  }
}
