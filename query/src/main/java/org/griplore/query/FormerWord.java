package org.griplore.query;

import java.util.List;
import java.util.Map;
import org.griplore.query.option.Option;

/**
 * A word that a question had in the version before: it is still understood, and not told any more.
 *
 * @param word what it was
 * @param kind the question it means now
 * @param options what goes with it now
 */
public record FormerWord(String word, String kind, Map<String, List<String>> options) {
  /** Those of the version before. */
  public static final List<FormerWord> ALL =
      List.of(
          new FormerWord("seek", "search", Map.of()),
          new FormerWord("tally", "find", Map.of("count", List.of(Option.YES))),
          new FormerWord("reading", "revision", Map.of()));
}
