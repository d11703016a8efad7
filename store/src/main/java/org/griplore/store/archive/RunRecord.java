package org.griplore.store.archive;

import org.griplore.store.vocabulary.LoggedRun;

/** A logged run with the report it stands in (database number). */
public record RunRecord(int report, String file, LoggedRun run) {}
