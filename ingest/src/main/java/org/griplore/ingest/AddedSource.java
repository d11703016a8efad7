package org.griplore.ingest;

import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.vocabulary.Refusal;

/** What became of one source: its outcome, or why it was refused. One of the two is null. */
public record AddedSource(String name, AdditionOutcome outcome, Refusal refusal) {}
