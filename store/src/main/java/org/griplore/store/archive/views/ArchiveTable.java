package org.griplore.store.archive.views;

import java.util.List;
import java.util.Locale;

/**
 * A view of an archive, which is a table of what is given away.
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
    /** A {@link String} of digits. */
    INTEGER,
    /** A {@link Double}. */
    NUMBER,
    /** A {@link String}: 1 or 0. */
    BOOLEAN,
    /** A {@link String}: ISO 8601 in UTC, to the second. */
    DATETIME;

    /** The word for it in a Table Schema. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Type ofWord(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
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
