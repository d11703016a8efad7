/** Text: its encoding, its lines, its delimiter, its records. */
package org.griplore.ingest.grid.text;
