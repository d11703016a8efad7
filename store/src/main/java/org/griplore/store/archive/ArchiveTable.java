package org.griplore.store.archive;

import java.util.List;

/**
 * A table of an archive as it is given away whole, in words that need no knowledge of the database.
 *
 * @param name its name, in lower case
 * @param title what it holds, in a few words
 * @param describes what a row is
 * @param fields its fields in order
 * @param key the fields that tell rows apart
 * @param references fields that name a row of another table, or of this one
 */
public record ArchiveTable(
    String name,
    String title,
    String describes,
    List<Field> fields,
    List<String> key,
    List<Reference> references) {
  /** What a field's values are. */
  public enum Type {
    /** A {@link String}. */
    STRING,
    /** A {@link Long}. */
    INTEGER,
    /** A {@link Double}. */
    NUMBER,
    /** A {@link Boolean}. */
    BOOLEAN,
    /** An {@link java.time.Instant}, to the second. */
    DATETIME
  }

  /**
   * A field.
   *
   * @param required whether every row has a value
   * @param words all values there can be; empty when they are not known beforehand
   */
  public record Field(
      String name, Type type, String describes, boolean required, List<String> words) {}

  /** A field that names a row of a table by that row's field. */
  public record Reference(String field, String table, String tableField) {}

  /** Takes the rows of a table one by one. */
  public interface RowTaker {
    /** Takes one row: a value a field, null where there is none. The array is used again. */
    void take(Object[] row);
  }
}
