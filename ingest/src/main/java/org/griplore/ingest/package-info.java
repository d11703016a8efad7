/** Griplore ingest. */
package org.griplore.ingest;
