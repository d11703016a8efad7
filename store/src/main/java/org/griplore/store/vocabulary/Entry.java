package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * A tyre in a test, with its results.
 *
 * @param model the model's settled name, as the archive lists it (maker and model)
 * @param name where the name stands and how it was written; null when it stands nowhere
 * @param size this entry's own size where it differs from the test's; null otherwise
 * @param state new or worn
 * @param variant what sets it apart from the plain version of its model
 * @param results the figures; those of one discipline and circumstance differ in their repeat
 * @param prices what it cost
 */
public record Entry(
    String model,
    Cell name,
    String size,
    TyreState state,
    Variant variant,
    List<Result> results,
    List<Price> prices) {
  /** Keeps the lists from changing. */
  public Entry {
    Objects.requireNonNull(model);
    Objects.requireNonNull(state);
    Objects.requireNonNull(variant);
    results = List.copyOf(results);
    prices = List.copyOf(prices);
  }

  /** A new tyre of the plain version. */
  public Entry(String model, Cell name, String size, List<Result> results) {
    this(model, name, size, TyreState.NEW, Variant.STANDARD, results, List.of());
  }

  /** The same under another model's name. */
  public Entry meaning(String other) {
    return new Entry(other, name, size, state, variant, results, prices);
  }
}
