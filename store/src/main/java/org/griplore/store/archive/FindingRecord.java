package org.griplore.store.archive;

import org.griplore.store.vocabulary.Finding;

/** A finding with the file it was made in. */
public record FindingRecord(long id, int revision, String file, Finding finding) {}
