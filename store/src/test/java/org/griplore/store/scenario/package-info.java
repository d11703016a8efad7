/**
 * An invented archive with a stated truth: makers, lines and generations that do not exist, their
 * true effects per discipline, and test reports simulated from them. Answers can be checked against
 * it because every true difference is known exactly.
 */
package org.griplore.store.scenario;
