package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Refusal;

/**
 * A table that is given away and the query for it. Each column of the query is named here in order
 * and becomes one field; a cell becomes four.
 */
final class TableQuery {
  private final String name;
  private final String title;
  private final String describes;
  private final List<ArchiveTable.Field> fields = new ArrayList<>();
  private final List<ArchiveTable.Reference> references = new ArrayList<>();
  private final List<Column> columns = new ArrayList<>();
  private CellText.SheetNames detailSheets;
  private List<String> key = List.of();
  private String sql;

  /** Reads one column of a row into fields from a position on. */
  private interface Reader {
    void read(ResultSet row, int column, Object[] into, int at) throws SQLException;
  }

  /** A column of the query and how many fields it becomes. */
  private record Column(int width, Reader reader) {}

  TableQuery(String name, String title, String describes) {
    this.name = name;
    this.title = title;
    this.describes = describes;
  }

  TableQuery text(String field, String says) {
    return add(field, ArchiveTable.Type.STRING, says, (row, column) -> row.getString(column));
  }

  TableQuery integer(String field, String says) {
    return add(
        field,
        ArchiveTable.Type.INTEGER,
        says,
        (row, column) -> {
          long value = row.getLong(column);
          return row.wasNull() ? null : value;
        });
  }

  /** The number given away for a row's number in the database. */
  TableQuery numbered(String field, LongUnaryOperator numbers, String says) {
    return add(
        field,
        ArchiveTable.Type.INTEGER,
        says,
        (row, column) -> {
          long id = row.getLong(column);
          return row.wasNull() ? null : numbers.applyAsLong(id);
        });
  }

  TableQuery real(String field, String says) {
    return add(field, ArchiveTable.Type.NUMBER, says, Sql::real);
  }

  TableQuery flag(String field, String says) {
    return add(field, ArchiveTable.Type.BOOLEAN, says, (row, column) -> row.getInt(column) != 0)
        .always();
  }

  TableQuery moment(String field, String says) {
    return add(
        field,
        ArchiveTable.Type.DATETIME,
        says,
        (row, column) -> Instant.parse(row.getString(column)).truncatedTo(ChronoUnit.SECONDS));
  }

  /** Four fields: sheet, row, column and the text found. */
  TableQuery cell(String prefix, CellText.SheetNames sheets, String of) {
    cellFields(prefix, of);
    columns.add(
        new Column(
            4,
            (row, column, into, at) ->
                put(CellText.read(row.getString(column), sheets), into, at)));
    return this;
  }

  /** The query's last column holds details: each becomes a row, with its name and its cell. */
  TableQuery detail(String field, CellText.SheetNames sheets, String says) {
    add(field, ArchiveTable.Type.STRING, says);
    always();
    cellFields("", "it");
    detailSheets = sheets;
    return this;
  }

  private void cellFields(String prefix, String of) {
    add(prefix + "sheet", ArchiveTable.Type.STRING, "Sheet or section where " + of + " stands");
    add(prefix + "row", ArchiveTable.Type.INTEGER, "Its row, from 1");
    add(prefix + "column", ArchiveTable.Type.INTEGER, "Its column, from 1");
    add(prefix + "found", ArchiveTable.Type.STRING, "The text found there, unchanged");
  }

  private static void put(Cell cell, Object[] into, int at) {
    into[at] = cell == null ? null : cell.sheet();
    into[at + 1] = cell == null ? null : (long) cell.row();
    into[at + 2] = cell == null ? null : (long) cell.column();
    into[at + 3] = cell == null ? null : cell.found();
  }

  private interface Value {
    Object read(ResultSet row, int column) throws SQLException;
  }

  private TableQuery add(String field, ArchiveTable.Type type, String says, Value value) {
    add(field, type, says);
    columns.add(new Column(1, (row, column, into, at) -> into[at] = value.read(row, column)));
    return this;
  }

  private void add(String field, ArchiveTable.Type type, String says) {
    fields.add(new ArchiveTable.Field(field, type, says, false, List.of()));
  }

  /** The last field always has a value. */
  TableQuery always() {
    ArchiveTable.Field last = fields.remove(fields.size() - 1);
    fields.add(
        new ArchiveTable.Field(last.name(), last.type(), last.describes(), true, last.words()));
    return this;
  }

  /** The last field has one of these words. */
  TableQuery oneOf(List<String> words) {
    ArchiveTable.Field last = fields.remove(fields.size() - 1);
    fields.add(
        new ArchiveTable.Field(
            last.name(), last.type(), last.describes(), last.required(), List.copyOf(words)));
    return this;
  }

  /** The last field names a row of a table. */
  TableQuery to(String table, String tableField) {
    references.add(
        new ArchiveTable.Reference(fields.get(fields.size() - 1).name(), table, tableField));
    return this;
  }

  TableQuery key(String... keyFields) {
    key = List.of(keyFields);
    return this;
  }

  TableQuery from(String query) {
    sql = query;
    return this;
  }

  ArchiveTable table() {
    return new ArchiveTable(
        name, title, describes, List.copyOf(fields), key, List.copyOf(references));
  }

  void forEach(Connection connection, ArchiveTable.RowTaker taker) {
    Object[] values = new Object[fields.size()];
    Sql.forEach(
        connection,
        sql,
        row -> {
          try {
            read(row, values, taker);
          } catch (IllegalArgumentException
              | IndexOutOfBoundsException
              | NullPointerException
              | DateTimeException e) {
            throw new Refusal(
                "A row of " + name + " cannot be read: `griplore check` says what is wrong.", e);
          }
        });
  }

  private void read(ResultSet row, Object[] values, ArchiveTable.RowTaker taker)
      throws SQLException {
    int at = 0;
    for (int i = 0; i < columns.size(); i++) {
      columns.get(i).reader().read(row, i + 1, values, at);
      at += columns.get(i).width();
    }
    if (detailSheets == null) {
      taker.take(values);
      return;
    }
    Map<String, Cell> details = DetailCells.read(row.getString(columns.size() + 1), detailSheets);
    for (Map.Entry<String, Cell> detail : new TreeMap<>(details).entrySet()) {
      values[at] = detail.getKey();
      put(detail.getValue(), values, at + 1);
      taker.take(values);
    }
  }
}
