/**
 * The archive on disk: one folder with the SQLite database {@code archive.db}, the original files
 * by hash under {@code originals}, and the derived text index under {@code index}.
 *
 * <p>Here stand its doors and what they hand over. Writing goes through {@link
 * org.griplore.store.archive.Addition}, one transaction a source; reading through {@link
 * org.griplore.store.archive.Snapshot} for whole-archive questions and through small records for
 * one test, one file or one cell. The rooms behind hold the SQL: {@code database} (the file, its
 * versions), {@code writing}, {@code reading}, {@code names} (meanings and descent), {@code views}
 * (what is given away) and {@code check}.
 */
package org.griplore.store.archive;
