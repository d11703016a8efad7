package org.griplore.store.archive;

import org.griplore.store.vocabulary.Details;

/**
 * A test as one current source tells it.
 *
 * @param id database number
 * @param test position of its test in {@link Snapshot#tests}
 * @param revision number of the revision
 * @param file the source's file name
 * @param details what it states, with the cells
 */
public record ReportRecord(int id, int test, int revision, String file, Details details) {}
