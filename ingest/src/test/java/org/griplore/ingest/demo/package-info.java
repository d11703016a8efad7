/**
 * Renders the simulated tests of the invented scenario into the files of {@code demo-archive}, in
 * the forms in which testers keep them, and says what a reader should find in each.
 */
package org.griplore.ingest.demo;
