package org.griplore.store.tyre;

import java.util.OptionalInt;

/**
 * Load index and speed symbol, like {@code 91V}, {@code 116/114R} or {@code (98Y)}.
 *
 * @param loadIndex load index, single fitment
 * @param dualLoadIndex load index in twin fitment, where given
 * @param speed the speed symbol
 * @param bracketed whether it stands in brackets: for more than the symbol's speed (from memory,
 *     check the official text)
 */
public record ServiceDescription(
    int loadIndex, OptionalInt dualLoadIndex, SpeedSymbol speed, boolean bracketed) {
  /** Checks the range of load indices of cars and vans. */
  public ServiceDescription {
    check(loadIndex);
    dualLoadIndex.ifPresent(ServiceDescription::check);
  }

  private static void check(int index) {
    if (index < 50 || index > 150) {
      throw new IllegalArgumentException("load index 50 to 150, not " + index);
    }
  }

  /** The load on one tyre in kg, where the table reaches. */
  public OptionalInt loadKg() {
    return LoadIndex.kilograms(loadIndex);
  }

  @Override
  public String toString() {
    String dual = dualLoadIndex.isPresent() ? "/" + dualLoadIndex.getAsInt() : "";
    String text = loadIndex + dual + speed.name();
    return bracketed ? "(" + text + ")" : text;
  }
}
