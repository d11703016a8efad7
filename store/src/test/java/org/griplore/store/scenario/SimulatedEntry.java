package org.griplore.store.scenario;

import java.util.Map;

/**
 * A model in a simulated test.
 *
 * @param model the model
 * @param results by discipline key in catalogue order, {@code overall} last; a discipline in which
 *     the entry has no result is absent
 */
public record SimulatedEntry(ScenarioModel model, Map<String, SimulatedResult> results) {}
