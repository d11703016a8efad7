package org.griplore.store.archive;

import java.time.Instant;

/**
 * What a user said of the columns of tables of one layout.
 *
 * @param id its number
 * @param layout the tables' headers, and who published them where that is stated
 * @param map what was said, as JSON
 * @param file the file it was said of
 * @param saidAt when that file was added
 */
public record ColumnMapRecord(int id, String layout, String map, String file, Instant saidAt) {}
