/**
 * The forms a source can have: tables of tyres and disciplines, notes, and our own long table,
 * lineage table and run log. Each turns grids or lines into reports with names settled.
 */
package org.griplore.ingest.forms;
