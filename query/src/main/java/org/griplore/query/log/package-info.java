/** What the runs of a test say: sets in order, the reference over the day, limits. */
package org.griplore.query.log;
