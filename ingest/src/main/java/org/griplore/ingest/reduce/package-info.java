/**
 * Runs back to back on a drifting track, reduced to results: speed-corrected, averaged as
 * decelerations, corrected by the reference set before and after, judged by limits, with the
 * uncertainty and each step kept. Pure computation; what each method assumes and where it comes
 * from stands in {@code METHODS-reduction.md}. The way in is {@link
 * org.griplore.ingest.reduce.RunReducer}.
 */
package org.griplore.ingest.reduce;
