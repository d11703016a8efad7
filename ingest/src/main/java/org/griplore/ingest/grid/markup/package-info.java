/** Tables of pages and documents that mark what is a table: HTML, Markdown. */
package org.griplore.ingest.grid.markup;
