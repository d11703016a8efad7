package org.griplore.store.scenario;

import org.griplore.store.vocabulary.Scale;

/**
 * The exact difference between a model and its predecessor.
 *
 * @param line maker and line
 * @param older full name of the predecessor
 * @param newer full name of the successor
 * @param discipline the catalogue key
 * @param scale RATIO: the step is a natural-log ratio; otherwise dB or points
 * @param step newer minus older, positive when the newer is better
 */
public record TrueStep(
    String line, String older, String newer, String discipline, Scale scale, double step) {}
