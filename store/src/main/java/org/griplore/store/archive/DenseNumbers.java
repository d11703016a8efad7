package org.griplore.store.archive;

import java.sql.Connection;
import java.util.Map;
import java.util.TreeMap;

/**
 * Numbers rows from 1 in the order they were added, without the gaps that an undo leaves: the same
 * contents have the same numbers, whatever came and went in between. Only gaps are kept in memory.
 */
final class DenseNumbers {
  private final TreeMap<Long, Long> missingBelow = new TreeMap<>(Map.of(Long.MIN_VALUE, 0L));

  private DenseNumbers() {}

  /** Numbers what a query gives: whole numbers from 1, rising. */
  static DenseNumbers of(Connection connection, String query) {
    DenseNumbers numbers = new DenseNumbers();
    long[] last = {0, 0};
    Sql.forEach(
        connection,
        query,
        row -> {
          long id = row.getLong(1);
          if (id != last[0] + 1) {
            numbers.missingBelow.put(id, id - last[1] - 1);
          }
          last[0] = id;
          last[1]++;
        });
    return numbers;
  }

  static DenseNumbers ofTable(Connection connection, String table) {
    return of(connection, "SELECT id FROM " + table + " ORDER BY id");
  }

  long of(long id) {
    return id - missingBelow.floorEntry(id).getValue();
  }
}
