package org.griplore.store.text;

import java.util.ArrayList;
import java.util.List;

/**
 * What was made of a query's text.
 *
 * @param respelled words that occur in no note, and what was looked for in their place
 * @param remarks sentences on what was ignored or loosened
 */
public record ReadQuery(List<Respelling> respelled, List<String> remarks) {
  /** A word of the query and the indexed word nearest to it. */
  public record Respelling(String word, String readAs) {}

  /** Keeps the lists from changing. */
  public ReadQuery {
    respelled = List.copyOf(respelled);
    remarks = List.copyOf(remarks);
  }

  /** Everything in sentences; empty when the text was read just as it stands. */
  public List<String> sentences() {
    List<String> all = new ArrayList<>();
    for (Respelling word : respelled) {
      all.add(
          "No note has \u201c"
              + word.word()
              + "\u201d: it was read as \u201c"
              + word.readAs()
              + "\u201d.");
    }
    all.addAll(remarks);
    return all;
  }
}
