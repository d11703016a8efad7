package org.griplore.store.text;

import java.util.Objects;

/**
 * What is looked for in the notes. The text is words; <code>"two words"</code> in quotes are looked
 * for side by side, {@code aqua*} for all words that begin so, and {@code -word} leaves out notes
 * with the word. There is no text that is an error: {@link ReadQuery} says what was made of it.
 *
 * @param text the words; when there are none, the newest notes are listed
 * @param filter which notes are looked at
 * @param limit at most this many notes come back, from 1 to {@link #MOST}
 * @param offset how many of the best are skipped, from 0
 */
public record NoteQuery(String text, NoteFilter filter, int limit, int offset) {
  /** The most notes of one answer, and the furthest that paging reaches. */
  public static final int MOST = 10_000;

  /** Checks the numbers. */
  public NoteQuery {
    Objects.requireNonNull(text);
    Objects.requireNonNull(filter);
    if (limit < 1 || offset < 0 || limit > MOST || offset > MOST - limit) {
      throw new IllegalArgumentException(
          "limit from 1 and offset from 0, together up to " + MOST + ": " + limit + ", " + offset);
    }
  }

  /** The twenty best notes for a text. */
  public static NoteQuery of(String text) {
    return new NoteQuery(text, NoteFilter.NONE, 20, 0);
  }

  /** The same question over fewer notes. */
  public NoteQuery within(NoteFilter filter) {
    return new NoteQuery(text, filter, limit, offset);
  }

  /** The same question, another page of its answer. */
  public NoteQuery page(int limit, int offset) {
    return new NoteQuery(text, filter, limit, offset);
  }
}
