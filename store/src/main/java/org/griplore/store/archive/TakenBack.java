package org.griplore.store.archive;

import java.util.List;

/**
 * What an undo took back, or would.
 *
 * @param revisions the revisions, in the order they were added
 * @param currentAgain the revisions that count again, because what had taken their place is gone
 * @param tests tests that no other revision tells of
 * @param entries entries
 * @param results results
 * @param runs logged runs
 * @param notes notes
 * @param lineage rows on models' descent
 * @param findings findings
 * @param models names of models that nothing else tells of
 * @param apartAgain names that are models of their own again, or mean what they meant before
 */
public record TakenBack(
    List<Revision> revisions,
    List<Revision> currentAgain,
    List<String> tests,
    long entries,
    long results,
    long runs,
    long notes,
    long lineage,
    long findings,
    List<String> models,
    List<String> apartAgain) {}
