/**
 * One run: which of its figures counts, its speed window, its unit, and where it stands in a log.
 */
package org.griplore.ingest.reduce.run;
