/**
 * Files as testers have them, turned into test reports in the archive. {@link
 * org.griplore.ingest.Intake} is the front door; a source goes grid, table, names, report.
 */
package org.griplore.ingest;
