/**
 * Any file a tester has, read by its content into grids of cells with positions. Nothing here knows
 * about tyres.
 */
package org.griplore.ingest.grid;
