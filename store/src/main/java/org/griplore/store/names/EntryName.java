package org.griplore.store.names;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/**
 * What a written name says of a tyre: its model, and beside it the state, the variant and the size
 * in which it was tested.
 *
 * <p>A state ({@code worn}, {@code 4 mm}, {@code after 20,000 km}) is never part of a model's name.
 * A variant is told by words that stand apart from the name ({@code Name (EV)}, {@code Name,
 * run-flat}, behind the size) or that are no abbreviation ({@code Name extra load}): the model is
 * then the name without them, unless the archive lists the whole as a model. An abbreviation that
 * is written as part of the name ({@code Name EV}) leaves the name whole, since tyres are sold
 * under such names; the variant is told, and that the two may be one model is offered for a
 * decision.
 *
 * @param model the name without descriptions
 * @param full the name with the variant's words, without state and size
 * @param state in what state it was tested; null when the name says nothing of it
 * @param variant the variant that the name tells
 * @param size the size in its canonical text; null when none stands there
 * @param marks other marks beside the name, as written: M+S, a set's number
 */
public record EntryName(
    String model, String full, TyreState state, Variant variant, String size, List<String> marks) {
  /** Keeps the list from changing. */
  public EntryName {
    Objects.requireNonNull(model);
    Objects.requireNonNull(full);
    Objects.requireNonNull(variant);
    marks = List.copyOf(marks);
  }

  /** Reads a name as it was written; a text that is nothing but descriptions is left whole. */
  public static EntryName of(String written) {
    return new EntryNameReader(written).read();
  }

  /** The state that the text of a cell of its own tells ({@code worn}, {@code 4 mm}). */
  public static Optional<TyreState> state(String text) {
    return Optional.ofNullable(new EntryNameReader(text).stateAlone());
  }

  /** The model's name, given what the archive lists: a whole name that is listed stays whole. */
  public String model(Predicate<String> isListed) {
    return !full.equals(model) && isListed.test(full) ? full : model;
  }
}
