package org.griplore.ingest;

import java.util.Map;
import java.util.TreeMap;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;

/**
 * What a user says beside the sources.
 *
 * @param details details by topic ({@code date}, {@code size}, {@code source_kind} ...) that fill
 *     what a source does not say
 * @param detailsFirst whether those details count before what a source says
 * @param map what the columns of its tables hold, where that is not to be recognised
 */
public record ReadOptions(Map<String, String> details, boolean detailsFirst, ColumnMap map) {
  /** Nothing said. */
  public static final ReadOptions NONE = new ReadOptions(Map.of());

  /** Keeps the map from changing. */
  public ReadOptions {
    details = Map.copyOf(details);
  }

  /** Details alone. */
  public ReadOptions(Map<String, String> details) {
    this(details, false, ColumnMap.NONE);
  }

  /** The same with something else said of the columns. */
  ReadOptions with(ColumnMap said) {
    return new ReadOptions(details, detailsFirst, said);
  }

  /** As kept with a reading: the same text for the same options. */
  public String text() {
    StringBuilder text = new StringBuilder();
    new TreeMap<>(details)
        .forEach(
            (topic, value) ->
                text.append(text.isEmpty() ? "" : "; ").append(topic).append('=').append(value));
    if (detailsFirst && !details.isEmpty()) {
      text.append("; details first");
    }
    if (!map.isEmpty()) {
      text.append(text.isEmpty() ? "" : "; ").append("map=").append(ColumnMapReader.text(map));
    }
    return text.toString();
  }
}
