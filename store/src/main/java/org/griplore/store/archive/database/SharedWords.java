package org.griplore.store.archive.database;

import java.sql.Connection;
import java.util.HashMap;
import java.util.Map;

/** The numbers of words that many rows share, kept in one two-column table each. */
public final class SharedWords {
  private final Connection connection;
  private final String table;
  private final String column;
  private final Map<String, Integer> numbers = new HashMap<>();

  public SharedWords(Connection connection, String table, String column) {
    this.connection = connection;
    this.table = table;
    this.column = column;
    Sql.list(
            connection,
            "SELECT id, " + column + " FROM " + table,
            row -> Map.entry(row.getString(2), row.getInt(1)))
        .forEach(word -> numbers.put(word.getKey(), word.getValue()));
  }

  /** The word's number; a new word gets the next. Null stays null. */
  public Integer number(String word) {
    if (word == null) {
      return null;
    }
    Integer known = numbers.get(word);
    if (known != null) {
      return known;
    }
    int next = numbers.size() + 1;
    Sql.execute(
        connection, "INSERT INTO " + table + " (id, " + column + ") VALUES (?, ?)", next, word);
    numbers.put(word, next);
    return next;
  }

  public boolean knows(String word) {
    return numbers.containsKey(word);
  }
}
