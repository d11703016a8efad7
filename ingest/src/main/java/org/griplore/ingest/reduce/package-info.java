/**
 * Runs back to back on a drifting track, reduced to results: each set's mean, corrected by the
 * reference set before and after it. Formulas and sources stand at the classes.
 */
package org.griplore.ingest.reduce;
