package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * Something in a source that was not understood, or was understood only by assuming something.
 *
 * @param kind what sort of finding it is
 * @param cell where; null when it is about the file as a whole
 * @param found the text found
 * @param expected what would have been understood, or what was assumed, in words
 * @param remedy what the user can do about it
 */
public record Finding(Kind kind, Cell cell, String found, String expected, String remedy) {
  /** The sorts of findings, from harmless to lost. */
  public enum Kind {
    /** Taken, with an assumption that can be changed. */
    ASSUMED("assumed"),
    /** Taken as something new: a name never met before. */
    NEW_NAME("new name"),
    /** Two places say different things; the first was kept. */
    CONFLICT("conflict"),
    /** Not understood and not taken; it stays readable in the original. */
    NOT_READ("not read");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /** The words shown. */
    public String key() {
      return key;
    }

    /** The word stored and given away: the same with hyphens. */
    public String word() {
      return key.replace(' ', '-');
    }

    /** The kind with this word. */
    public static Optional<Kind> ofWord(String word) {
      return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
  }

  /** Checks that no part is null except the cell. */
  public Finding {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(found);
    Objects.requireNonNull(expected);
    Objects.requireNonNull(remedy);
  }
}
