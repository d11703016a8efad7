package org.griplore.store.archive.database;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** How moments are stored: ISO 8601 in UTC, to the second. */
public final class StoredMoment {
  private StoredMoment() {}

  public static String text(Instant moment) {
    return moment.truncatedTo(ChronoUnit.SECONDS).toString();
  }
}
