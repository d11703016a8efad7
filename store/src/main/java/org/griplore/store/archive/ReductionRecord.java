package org.griplore.store.archive;

import org.griplore.store.vocabulary.Reduction;

/** A reduction with the report it stands in (database number) and the name of its file. */
public record ReductionRecord(int report, String file, Reduction reduction) {}
