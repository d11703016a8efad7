/**
 * What to expect of a field of tyres in a new test, and how well such expectations did in the past.
 *
 * <p>Model levels are random, not fixed: a line begins around the mean of its season class, each
 * generation differs from its predecessor by the usual step, give or take, and results scatter
 * around the level. So thin evidence is drawn towards what is usual, and a model that was never
 * tested is expected at its predecessor plus the usual step.
 */
package org.griplore.query.outlook;
