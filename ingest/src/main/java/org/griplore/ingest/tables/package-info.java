/**
 * Readings of tables: a grid is cut into regions, each region gives several readings (tyres down or
 * across, deep or shallow headers, a row a tyre or a result), each reading collects evidence for
 * and against itself, and the best is taken where it is clearly ahead and contradicts nothing; else
 * it is a draft.
 */
package org.griplore.ingest.tables;
