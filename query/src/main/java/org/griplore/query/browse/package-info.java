/**
 * What the archive holds: tests, models, one test in full, sources, findings, one figure's origin.
 */
package org.griplore.query.browse;
