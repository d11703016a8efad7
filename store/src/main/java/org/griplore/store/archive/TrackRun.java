package org.griplore.store.archive;

import java.time.Instant;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * A run that was entered on the day of a plan.
 *
 * @param id its number, in the order of entering
 * @param enteredAt when
 * @param corrects number of the line that it corrects; null when it is a run of its own
 * @param run the run; it has no cell
 */
public record TrackRun(long id, Instant enteredAt, Long corrects, LoggedRun run) {}
