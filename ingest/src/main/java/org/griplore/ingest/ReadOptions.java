package org.griplore.ingest;

import java.util.Map;
import java.util.TreeMap;

/**
 * What a user says beside the sources: details by topic ({@code date}, {@code size}, {@code
 * source_kind} ...) that fill what a source does not say.
 */
public record ReadOptions(Map<String, String> details) {
  /** Nothing said. */
  public static final ReadOptions NONE = new ReadOptions(Map.of());

  /** Keeps the map from changing. */
  public ReadOptions {
    details = Map.copyOf(details);
  }

  /** As kept with a reading: the same text for the same options. */
  public String text() {
    StringBuilder text = new StringBuilder();
    new TreeMap<>(details)
        .forEach(
            (topic, value) ->
                text.append(text.isEmpty() ? "" : "; ").append(topic).append('=').append(value));
    return text.toString();
  }
}
