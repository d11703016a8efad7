package org.griplore.query.network;

import java.util.OptionalDouble;

/**
 * A model among the models of its part.
 *
 * @param model number of the model
 * @param part number of its connected part; models of different parts are never compared
 * @param effect its effect less the mean effect of the part's models, plus is better
 * @param score P-score (Ruecker and Schwarzer 2015, BMC Med Res Methodol 15:58): mean certainty, 0
 *     to 1, of being better than another model of the part; empty when no variance could be
 *     estimated
 * @param tests number of tests with at least one other model that it stood in
 */
public record ModelStanding(
    int model, int part, Estimate effect, OptionalDouble score, int tests) {}
