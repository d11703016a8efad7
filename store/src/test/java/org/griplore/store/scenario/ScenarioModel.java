package org.griplore.store.scenario;

import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.SeasonClass;

/**
 * One invented model, that is one generation of a line.
 *
 * @param maker the maker's name
 * @param line the line's name, without the generation
 * @param name the model's name without the maker, for example {@code Aurelis 5}
 * @param generation 1 for the oldest model of the line in the archive
 * @param launched the year it came to market
 * @param season what it is built for
 * @param segment the market segment
 * @param follows the name (with maker) of the predecessor; empty for the oldest
 * @param aliases other ways in which testers write the full name
 */
public record ScenarioModel(
    String maker,
    String line,
    String name,
    int generation,
    int launched,
    SeasonClass season,
    String segment,
    Optional<String> follows,
    List<String> aliases) {

  /** Maker and name, as a careful tester writes it. */
  public String fullName() {
    return maker + " " + name;
  }

  /** Maker and line: unique in the scenario. */
  public String fullLine() {
    return maker + " " + line;
  }
}
