/**
 * The two-way network of one discipline: results of models in tests, joined into comparisons of any
 * two models that some chain of tests connects.
 *
 * <p>The model is {@code y(i,t) = test effect + model effect + heterogeneity + error}, test and
 * model effects fixed. {@link org.griplore.query.network.NetworkFitter} turns {@link
 * org.griplore.query.network.Arms} into an immutable {@link org.griplore.query.network.NetworkFit}.
 * Nothing here knows a unit, a catalogue or a database: plus is better, models and tests are
 * numbers.
 */
package org.griplore.query.network;
