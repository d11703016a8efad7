/**
 * What a table says: where it begins, what its columns are, how its numbers and dates are written.
 * Steps are small and each can be overruled; what is assumed becomes a finding.
 */
package org.griplore.ingest.recognise;
