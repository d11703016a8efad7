package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * A model in a test, with its results.
 *
 * @param model the model's settled name, as the archive lists it (maker and model)
 * @param name where the name stands and how it was written; null when it stands nowhere
 * @param size this entry's own size where it differs from the test's; null otherwise
 * @param results the figures, one a discipline
 */
public record Entry(String model, Cell name, String size, List<Result> results) {
  /** Keeps the list from changing. */
  public Entry {
    Objects.requireNonNull(model);
    results = List.copyOf(results);
  }
}
