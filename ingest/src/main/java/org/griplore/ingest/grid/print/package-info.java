/** Printed pages, whose letters stand at places and nothing says what is a table. */
package org.griplore.ingest.grid.print;
