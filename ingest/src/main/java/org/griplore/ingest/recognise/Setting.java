package org.griplore.ingest.recognise;

import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.TyreState;

/**
 * Under what a column's figures came about: speeds, kind, new or worn tyres.
 *
 * @param circumstance the speeds and the kind
 * @param state the state of the tyres; null when the header does not say
 */
public record Setting(Circumstance circumstance, TyreState state) {
  /** Measured, and nothing more is said. */
  public static final Setting PLAIN = new Setting(Circumstance.MEASURED, null);

  /** In a few words: {@code 80-20 worn}; empty when nothing is said. */
  public String words() {
    StringBuilder words = new StringBuilder();
    if (circumstance.fromKmh() != null) {
      words.append(' ').append(number(circumstance.fromKmh())).append('-');
      words.append(circumstance.toKmh() == null ? "" : number(circumstance.toKmh()));
    }
    if (circumstance.kind() != org.griplore.store.vocabulary.ResultKind.MEASURED) {
      words.append(' ').append(circumstance.kind().key());
    }
    if (state != null) {
      words.append(' ').append(state.wear().key());
    }
    return words.toString().strip();
  }

  private static String number(double speed) {
    double tenth = Math.round(speed * 10) / 10.0;
    return tenth == Math.rint(tenth) ? String.valueOf((long) tenth) : String.valueOf(tenth);
  }
}
