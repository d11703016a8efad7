/**
 * The archive on disk: one folder with the SQLite database {@code archive.db}, the original files
 * by hash under {@code originals}, and the derived text index under {@code index}.
 *
 * <p>Writing goes through {@link org.griplore.store.archive.Addition}, one transaction a source;
 * reading through {@link org.griplore.store.archive.Snapshot} for whole-archive questions and
 * through the small readers for one test, one file or one cell. All SQL of the project is here.
 */
package org.griplore.store.archive;
