package org.griplore.store.archive;

import org.griplore.store.vocabulary.Note;

/**
 * One note as a revision told it, the revision superseded or not.
 *
 * @param test the test's key
 * @param note the note; its model is the one that it counts for
 */
public record StoredNote(String test, Note note) {}
