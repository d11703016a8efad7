package org.griplore.store.archive;

import java.sql.Connection;
import java.time.Clock;
import java.util.Map;
import org.griplore.store.archive.database.NextId;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.Refusal;

/**
 * Sources that are added together and can be taken back together: what one command, or one commit
 * in the page, puts in. Each source still goes in whole or not at all. When somebody else adds in
 * between, what follows counts as another delivery, so that the last one is always the newest
 * revisions and nothing else. Not thread-safe.
 */
public final class Delivery {
  private final Archive archive;
  private final Clock clock;
  private final String reason;
  private int number;

  Delivery(Archive archive, Clock clock, String reason) {
    this.archive = archive;
    this.clock = clock;
    this.reason = reason;
  }

  /**
   * Starts adding a source. Nothing is seen by others, and nothing stays, until {@link
   * Addition#commit}.
   *
   * @param form what the source was read as, in a word or two
   * @param options how it was read, in the order to be kept; empty when by the defaults
   * @throws Refusal when the archive is read-only or somebody else is adding
   */
  public Addition begin(Original original, String form, Map<String, String> options) {
    archive.refuseUnwritable("nothing can be added");
    return Addition.begin(archive, this, original, form, options, clock);
  }

  /** The number to store with the next revision; the lock is held. */
  int numberNow(Connection connection) {
    long newest = Sql.number(connection, "SELECT coalesce(max(id), 0) FROM delivery");
    if (number > 0 && newest == number) {
      return number;
    }
    int next = (int) NextId.of(connection, "delivery");
    Sql.execute(
        connection,
        "INSERT INTO delivery (id, added_at, reason) VALUES (?, ?, ?)",
        next,
        StoredMoment.text(clock.instant()),
        reason);
    return next;
  }

  /** A revision with this number has been stored for good. */
  void stored(int numberOfDelivery) {
    number = numberOfDelivery;
  }
}
