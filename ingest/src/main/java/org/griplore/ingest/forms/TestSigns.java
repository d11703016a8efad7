package org.griplore.ingest.forms;

import java.util.Optional;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.HeaderKey;

/** What says that two reports tell of two tests: another day, tyre size or vehicle. */
public final class TestSigns {
  private TestSigns() {}

  /** What one report states otherwise than another; empty where nothing speaks against one test. */
  public static Optional<String> apart(Details told, Details earlier) {
    String day = text(told.date());
    if (differ(day, text(earlier.date()))) {
      return Optional.of(day);
    }
    if (differ(told.size(), earlier.size())) {
      return Optional.of(told.size());
    }
    String vehicle = key(told.vehicle());
    return differ(vehicle, key(earlier.vehicle())) ? Optional.of(vehicle) : Optional.empty();
  }

  private static String text(Object stated) {
    return stated == null ? null : stated.toString();
  }

  private static String key(String words) {
    return words == null ? null : HeaderKey.of(words);
  }

  /** Of two that both are stated, neither says the same less exactly. */
  private static boolean differ(String one, String other) {
    return one != null && other != null && !one.startsWith(other) && !other.startsWith(one);
  }
}
