/**
 * The database file: connections, plain SQL, columns that belong together, and how a database of
 * an\n * older version is carried over.
 */
package org.griplore.store.archive.database;
