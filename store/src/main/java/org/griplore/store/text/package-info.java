/**
 * The text index of notes, derived from the archive and kept in its folder {@code index}: {@link
 * org.griplore.store.text.NoteIndex} brings itself up to date with the archive and answers {@link
 * org.griplore.store.text.NoteQuery}. All Lucene types of the project are here.
 */
package org.griplore.store.text;
