package org.griplore.store.text;

import java.util.List;

/**
 * The notes found, best first.
 *
 * @param total how many notes match in all
 * @param totalIsExact whether there are just that many; otherwise there are at least that many
 * @param hits this page of them
 * @param how what was made of the text
 */
public record NoteHits(long total, boolean totalIsExact, List<NoteHit> hits, ReadQuery how) {
  /** Keeps the list from changing. */
  public NoteHits {
    hits = List.copyOf(hits);
  }
}
