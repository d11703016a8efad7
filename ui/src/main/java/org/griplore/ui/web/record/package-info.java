/**
 * Pages of one thing: a model, a line, a test and its runs, an origin; and the grid of what was
 * tested.
 */
package org.griplore.ui.web.record;
