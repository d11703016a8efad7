package org.griplore.ingest;

import java.util.LinkedHashMap;
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

  /**
   * As kept with a revision: by name, the details first in their order, then what else was said.
   */
  public Map<String, String> kept() {
    Map<String, String> kept = new LinkedHashMap<>(new TreeMap<>(details));
    if (detailsFirst && !details.isEmpty()) {
      kept.put(StoredOptions.DETAILS_FIRST, "yes");
    }
    if (!map.isEmpty()) {
      kept.put(StoredOptions.MAP, ColumnMapReader.text(map));
    }
    return kept;
  }
}
