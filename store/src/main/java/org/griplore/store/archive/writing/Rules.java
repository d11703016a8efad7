package org.griplore.store.archive.writing;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.NextId;
import org.griplore.store.archive.database.PhraseColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Phrase;
import org.griplore.store.wording.PhraseBook;

/** The rules that results share: each is a list of phrases. */
public final class Rules {
  private final Connection connection;
  private final Map<String, Integer> numbers = new HashMap<>();

  public Rules(Connection connection) {
    this.connection = connection;
    words(connection).forEach((number, words) -> numbers.put(words, number));
  }

  /** The words of all rules by their numbers. */
  public static Map<Integer, String> words(Connection connection) {
    Map<Integer, List<Phrase>> phrases = new HashMap<>();
    Sql.forEach(
        connection,
        "SELECT rule_id, code, parameters FROM rule_part ORDER BY rule_id, position",
        row ->
            phrases
                .computeIfAbsent(row.getInt(1), rule -> new ArrayList<>())
                .add(PhraseColumns.phrase(row.getString(2), row.getString(3))));
    Map<Integer, String> words = new HashMap<>();
    phrases.forEach((rule, parts) -> words.put(rule, PhraseBook.words(parts)));
    return words;
  }

  /** The words of one rule; empty where there is none. */
  public static String words(Connection connection, int rule) {
    return PhraseBook.words(
        Sql.list(
            connection,
            "SELECT code, parameters FROM rule_part WHERE rule_id = ? ORDER BY position",
            row -> PhraseColumns.phrase(row.getString(1), row.getString(2)),
            rule));
  }

  /** The rule's number; a new one gets the next. Null for no words. */
  public Integer number(String words) {
    if (words.isEmpty()) {
      return null;
    }
    Integer known = numbers.get(words);
    if (known != null) {
      return known;
    }
    int next = (int) NextId.of(connection, "rule");
    Sql.execute(connection, "INSERT INTO rule (id) VALUES (?)", next);
    write(connection, next, PhraseBook.phrases(words));
    numbers.put(words, next);
    return next;
  }

  public static void write(Connection connection, int rule, List<Phrase> parts) {
    for (int i = 0; i < parts.size(); i++) {
      Sql.execute(
          connection,
          "INSERT INTO rule_part (rule_id, position, code, parameters) VALUES (?, ?, ?, ?)",
          rule,
          i + 1,
          parts.get(i).code(),
          PhraseColumns.json(parts.get(i).parameters()));
    }
  }
}
