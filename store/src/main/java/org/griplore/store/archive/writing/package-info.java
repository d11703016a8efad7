/**
 * How a source's reports, runs, notes and lineage rows become rows, and what a revision changed.
 */
package org.griplore.store.archive.writing;
