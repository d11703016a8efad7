package org.griplore.store.archive;

import org.griplore.store.vocabulary.LineageRow;

/** What a current lineage table says of a model, and the file it stands in. */
public record LineageSaid(String file, LineageRow row) {}
