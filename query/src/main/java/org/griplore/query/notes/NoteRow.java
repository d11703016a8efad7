package org.griplore.query.notes;

import org.griplore.store.text.NoteHit;

/**
 * A note that was found, or how many notes share something: one of the two, the other is null.
 *
 * @param hit the note
 * @param count how many share something, where notes are counted
 */
public record NoteRow(NoteHit hit, NoteCount count) {
  static NoteRow of(NoteHit hit) {
    return new NoteRow(hit, null);
  }

  static NoteRow of(NoteCount count) {
    return new NoteRow(null, count);
  }
}
