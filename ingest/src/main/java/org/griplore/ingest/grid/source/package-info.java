/** Opens a source, tells by its content what it is, and hands it to the reader that takes it. */
package org.griplore.ingest.grid.source;
