package org.griplore.store.vocabulary;

import java.util.Objects;

/**
 * What a tester wrote down.
 *
 * @param model the settled name of the model it is about; null for the test as a whole
 * @param discipline the catalogue key it is about; null when not said
 * @param text the note
 * @param cell where it stands
 */
public record Note(String model, String discipline, String text, Cell cell) {
  /** Checks the text. */
  public Note {
    Objects.requireNonNull(text);
    Objects.requireNonNull(cell);
  }
}
