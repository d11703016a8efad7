package org.griplore.ingest.tables;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.vocabulary.HeaderKey;

/**
 * Words of tables that are neither disciplines nor details, in many languages: what sums rows up,
 * which way is better, what is new or worn, which figures are declared. The words are data: {@code
 * table-words.json}.
 */
enum TableWords {
  MEAN,
  MEDIAN,
  BEST,
  WORST,
  MIN,
  MAX,
  SD,
  COUNT,
  RANGE,
  SUM,
  WEIGHT,
  UNIT,
  TARGET,
  LIMIT,
  REFERENCE,
  DIFFERENCE,
  FILLER,
  LOWER,
  HIGHER,
  BETTER,
  LOST,
  DELTA,
  INDEX,
  DECLARED,
  CLAIMED,
  NEW,
  WORN,
  RUN;

  private static final int LONGEST = 4;
  private static final Map<TableWords, Set<String>> WORDS = read();

  private static Map<TableWords, Set<String>> read() {
    try (InputStream in = TableWords.class.getResourceAsStream("table-words.json")) {
      Map<String, List<String>> lists =
          new ObjectMapper().readValue(in, new TypeReference<Map<String, List<String>>>() {});
      Map<TableWords, Set<String>> words = new HashMap<>();
      for (TableWords kind : values()) {
        Set<String> keys = new HashSet<>();
        for (String word : lists.get(kind.name().toLowerCase(java.util.Locale.ROOT))) {
          keys.add(HeaderKey.of(word));
        }
        keys.remove("");
        words.put(kind, keys);
      }
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a text is one of these words and nothing else. */
  boolean is(String text) {
    return WORDS.get(this).contains(HeaderKey.of(text));
  }

  /** Whether one of these words stands in a text. */
  boolean in(String text) {
    List<String> words = HeaderKey.words(text);
    for (int i = 0; i < words.size(); i++) {
      if (at(words, i) > 0) {
        return true;
      }
    }
    return false;
  }

  /** How many words from a place on are one of these; 0 when they are none. */
  int at(List<String> words, int from) {
    for (int length = Math.min(LONGEST, words.size() - from); length > 0; length--) {
      if (WORDS.get(this).contains(String.join(" ", words.subList(from, from + length)))) {
        return length;
      }
    }
    return 0;
  }
}
