package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * What is known of a model's descent. All but {@code name} may be null.
 *
 * @param name the model's full name, maker first
 * @param maker the maker
 * @param line the product family
 * @param generation the generation's own mark within the line ("4", "Evo")
 * @param launched when it came to market: a year or a date
 * @param season season class
 * @param segment market segment in words
 * @param follows full name of the predecessor
 * @param aliases other spellings that mean this model
 * @param cell where it stands; null when it was entered by hand
 */
public record LineageRow(
    String name,
    String maker,
    String line,
    String generation,
    TestDate launched,
    SeasonClass season,
    String segment,
    String follows,
    List<String> aliases,
    Cell cell) {
  /** Keeps the list from changing. */
  public LineageRow {
    Objects.requireNonNull(name);
    aliases = List.copyOf(aliases);
  }
}
