/** Files that hold several documents: packed folders, and letters with what is sent with them. */
package org.griplore.ingest.grid.packed;
