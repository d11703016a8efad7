package org.griplore.query.network;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a combination of effects is without some of the results, variances as they were.
 *
 * @param before the estimate by all results
 * @param after the estimate without them; empty when nothing connects the models any more
 */
public record Removal(Estimate before, Optional<Estimate> after) {
  /** How far the estimate moves: after less before; empty when nothing is left. */
  public OptionalDouble change() {
    return after.isPresent()
        ? OptionalDouble.of(after.get().value() - before.value())
        : OptionalDouble.empty();
  }
}
