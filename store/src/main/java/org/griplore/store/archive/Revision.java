package org.griplore.store.archive;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One reading of one content of a source.
 *
 * @param id its number in the archive
 * @param origin what the source is known by
 * @param number 1 for the source's first revision, then 2 ...
 * @param sha256 hash of the content
 * @param bytes length of the content
 * @param name the file's name
 * @param form what it was read as
 * @param options how it was read, where that was said, in the order it was kept
 * @param addedAt when
 * @param supersededBy id of the revision that took its place; null for the current one
 */
public record Revision(
    int id,
    String origin,
    int number,
    String sha256,
    long bytes,
    String name,
    String form,
    Map<String, String> options,
    Instant addedAt,
    Integer supersededBy) {
  /** Keeps the options from changing, in their order. */
  public Revision {
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
  }
}
