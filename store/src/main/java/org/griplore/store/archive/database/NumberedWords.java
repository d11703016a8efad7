package org.griplore.store.archive.database;

import java.sql.Connection;
import java.util.HashMap;
import java.util.Map;

/** Reads a number and a word a row. */
public final class NumberedWords {
  private NumberedWords() {}

  public static Map<Integer, String> read(Connection connection, String sql) {
    Map<Integer, String> words = new HashMap<>();
    Sql.list(connection, sql, row -> words.put(row.getInt(1), row.getString(2)));
    return words;
  }
}
