package org.griplore.ingest.recognise;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Unit;

/**
 * What a user says of a table's columns where the program would read them otherwise. It counts
 * before everything that is recognised.
 *
 * @param headerRow the row that heads the columns, as counted in the source; null to find it
 * @param decimal the decimal mark of figures that leave it open; null to find it
 * @param monthFirst whether the month stands first in dates like 6/14/2021; null when not said
 * @param columns what is said of single columns; the first that fits a column counts
 * @param reading which reading is taken of tables that cannot be decided on: 1 for the best, 2 for
 *     the second; null to leave them drafts
 */
public record ColumnMap(
    Integer headerRow,
    DecimalMark decimal,
    Boolean monthFirst,
    List<Rule> columns,
    Integer reading) {
  /** Nothing is said. */
  public static final ColumnMap NONE = new ColumnMap(null, null, null, List.of());

  /** Nothing is said of tables that cannot be decided on. */
  public ColumnMap(Integer headerRow, DecimalMark decimal, Boolean monthFirst, List<Rule> columns) {
    this(headerRow, decimal, monthFirst, columns, null);
  }

  /** The same, which takes this reading of tables that cannot be decided on. */
  public ColumnMap taking(int number) {
    return new ColumnMap(headerRow, decimal, monthFirst, columns, number);
  }

  /** Keeps the list from changing. */
  public ColumnMap {
    columns = List.copyOf(columns);
  }

  /**
   * What is said of one column.
   *
   * @param column its number in the table, from 1 on the left (from the top where the tyres stand
   *     across); null when the header tells
   * @param header its header as found; null when the number tells
   * @param role what it holds; null to find it
   * @param unit the unit of its figures; null to find it
   * @param better which way is better in per cents of a scale of their own; null when not said
   */
  public record Rule(Integer column, String header, ColumnRole role, Unit unit, Direction better) {
    private boolean fits(int number, TableArea.Head head) {
      return (column == null || column == number)
          && (header == null
              || same(header, head.text())
              || same(header, head.text() + " " + head.unitText()));
    }

    /** What the column holds, given what it would be taken for. */
    ColumnRole over(ColumnRole found) {
      ColumnRole said = role == null ? found : role;
      if (!(said instanceof ColumnRole.Value value)) {
        return said;
      }
      Setting setting =
          found instanceof ColumnRole.Value of && value.setting().equals(Setting.PLAIN)
              ? of.setting()
              : value.setting();
      return new ColumnRole.Value(value.discipline(), unitOver(found), null, setting);
    }

    private Unit unitOver(ColumnRole found) {
      if (unit != null) {
        return unit;
      }
      Unit read = found instanceof ColumnRole.Value value ? value.unit() : null;
      boolean fits =
          read != null && (!(role instanceof ColumnRole.Value to) || to.discipline().accepts(read));
      return fits ? read : null;
    }

    private static boolean same(String one, String other) {
      return plain(one).equals(plain(other));
    }
  }

  /** What is said of a table's column; the number counts from 1. */
  public Optional<Rule> of(int number, TableArea.Head head) {
    return columns.stream().filter(rule -> rule.fits(number, head)).findFirst();
  }

  /** What is said of columns with this header, wherever they stand. */
  Optional<Rule> of(String header) {
    TableArea.Head head = new TableArea.Head(header, null, null);
    return columns.stream().filter(rule -> rule.column() == null && rule.fits(0, head)).findFirst();
  }

  /** Whether nothing is said. */
  public boolean isEmpty() {
    return equals(NONE);
  }

  /** A header without differences that nobody sees. */
  public static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0\\u202f]+", " ");
  }
}
