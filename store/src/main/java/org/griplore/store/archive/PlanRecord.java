package org.griplore.store.archive;

import java.time.Instant;

/**
 * A plan of a test day.
 *
 * @param id its number
 * @param name its name
 * @param plan the plan, as JSON
 * @param forecast what was expected before the day, as JSON; null until it is frozen
 * @param digest digest of the archive it was expected from; null likewise
 * @param frozenAt since when plan and forecast never change; null likewise
 */
public record PlanRecord(
    int id, String name, String plan, String forecast, String digest, Instant frozenAt) {}
