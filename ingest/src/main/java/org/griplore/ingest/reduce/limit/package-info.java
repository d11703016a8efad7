/** Validity limits of published methods, and what stands or is void under them. */
package org.griplore.ingest.reduce.limit;
