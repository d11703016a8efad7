package org.griplore.store.archive;

import java.util.List;
import org.griplore.store.vocabulary.Details;

/**
 * A test with what its current reports together say of it (the first that states a detail counts).
 *
 * @param id database number
 * @param key what it is known by
 * @param details without cells: each report keeps its own
 * @param reports positions of its reports in {@link Snapshot#reports}
 */
public record TestRecord(int id, String key, Details details, List<Integer> reports) {}
