package org.griplore.query.network;

import java.util.OptionalDouble;

/**
 * A model among the models of its component.
 *
 * @param model number of the model
 * @param component number of its connected component; models of different components are never
 *     compared
 * @param effect its effect less the mean effect of the component's models, plus is better
 * @param score P-score (Ruecker and Schwarzer 2015, BMC Med Res Methodol 15:58): mean certainty, 0
 *     to 1, of being better than another model of the component; empty when no variance could be
 *     estimated
 * @param tests number of tests with at least one other model that it stood in
 */
public record ModelStanding(
    int model, int component, Estimate effect, OptionalDouble score, int tests) {}
