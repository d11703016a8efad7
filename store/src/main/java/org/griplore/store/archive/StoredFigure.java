package org.griplore.store.archive;

import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/**
 * One figure as a revision told it, the revision superseded or not.
 *
 * @param test the test's key
 * @param model the model that it counts for
 * @param size the entry's own size; null where it has none
 * @param state new or worn
 * @param variant what sets the tyre apart from the plain version of its model
 * @param name where the tyre's name stands; null where it stands nowhere
 * @param result the figure with its cells; its steps are told by {@link Archive#originOf} only
 */
public record StoredFigure(
    String test,
    String model,
    String size,
    TyreState state,
    Variant variant,
    Cell name,
    Result result) {}
