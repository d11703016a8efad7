/**
 * How rows become what the archive hands over: a snapshot of everything, or one test, revision or\n
 * * figure.
 */
package org.griplore.store.archive.reading;
