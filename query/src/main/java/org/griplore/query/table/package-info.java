/**
 * The comparison table for a new test: tyres down, disciplines across, each cell measured in tests
 * of like size and car, expected from all tests, or without evidence.
 */
package org.griplore.query.table;
