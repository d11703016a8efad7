package org.griplore.store.names;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Words by their first and last letters, so that words nearly spelt like one are found without
 * looking at all: one wrong letter leaves either the beginning or the end of a word as it is.
 */
final class WordBlocks {
  private static final int SHORT = 2;
  private static final int LONG = 3;
  private static final int LONG_FROM = 7;
  private static final int MOST_WRONG = 2;

  private final Map<String, List<String>> blocks = new HashMap<>();

  /** Learns a word, which must not have been learnt. */
  void add(String word) {
    for (int letters = SHORT; letters <= LONG && letters <= word.length(); letters++) {
      block(beginning(word, letters)).add(word);
      block(end(word, letters)).add(word);
    }
  }

  /**
   * Words that begin as this one, or are nearly spelt like it; marks are never taken for others.
   */
  Set<String> near(String word) {
    Set<String> near = new LinkedHashSet<>();
    if (Spelling.isMark(word)) {
      return near;
    }
    int letters = word.length() < LONG_FROM ? SHORT : LONG;
    for (String block : List.of(beginning(word, letters), end(word, letters))) {
      for (String other : blocks.getOrDefault(block, List.of())) {
        if (other.startsWith(word) || Spelling.distance(word, other, MOST_WRONG) <= MOST_WRONG) {
          near.add(other);
        }
      }
    }
    return near;
  }

  private List<String> block(String key) {
    return blocks.computeIfAbsent(key, k -> new ArrayList<>());
  }

  private static String beginning(String word, int letters) {
    return word.substring(0, letters) + "*";
  }

  private static String end(String word, int letters) {
    return "*" + word.substring(word.length() - letters);
  }
}
