/** Tables of JSON as files and interfaces give it. */
package org.griplore.ingest.grid.json;
