package org.griplore.store.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** How moments are stored: ISO 8601 in UTC, to the second. */
final class Moments {
  private Moments() {}

  static String text(Instant moment) {
    return moment.truncatedTo(ChronoUnit.SECONDS).toString();
  }
}
