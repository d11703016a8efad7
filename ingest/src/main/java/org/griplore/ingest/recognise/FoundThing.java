package org.griplore.ingest.recognise;

import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Finding;

/**
 * A finding before the sheet that it stands on is known.
 *
 * @param cell where; null when it is about the table as a whole
 */
public record FoundThing(
    Finding.Kind kind, GridCell cell, String found, String expected, String remedy) {}
