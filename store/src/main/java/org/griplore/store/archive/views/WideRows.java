package org.griplore.store.archive.views;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.griplore.store.archive.database.Sql;

/**
 * Reads the rows of a view. Each column that is fetched costs more than the reading of a row:
 * neighbouring columns of texts and whole numbers come as one text, parted by a character that
 * hardly any text holds. Where one does hold it, the row is read once more, column by column.
 * Numbers with a point come by themselves, so that none is rounded.
 */
final class WideRows {
  private static final char BETWEEN = '\u001f';

  private final ArchiveTable table;
  private final List<Group> groups = new ArrayList<>();
  private final String end;

  /** Columns that come together: those from {@code first} on. */
  private record Group(int first, int width, boolean number) {}

  WideRows(ArchiveTable table) {
    this.table = table;
    List<ArchiveTable.Field> fields = table.fields();
    int first = 0;
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).type() == ArchiveTable.Type.NUMBER) {
        addTexts(first, i);
        groups.add(new Group(i, 1, true));
        first = i + 1;
      }
    }
    addTexts(first, fields.size());
    this.end = " FROM " + table.name();
  }

  private void addTexts(int from, int to) {
    if (to > from) {
      groups.add(new Group(from, to - from, false));
    }
  }

  private String column(int i) {
    return '"' + table.fields().get(i).name() + '"';
  }

  private String expression(Group group) {
    if (group.number()) {
      return column(group.first());
    }
    List<String> parts = new ArrayList<>();
    for (int i = group.first(); i < group.first() + group.width(); i++) {
      parts.add("coalesce(" + column(i) + ", '')");
    }
    return String.join(" || char(31) || ", parts);
  }

  /** Gives each row's values in the order of the key: a text or number a field, null if none. */
  void forEach(Connection connection, ArchiveTable.RowTaker taker) {
    String keys =
        table.key().stream().map(key -> '"' + key + '"').collect(Collectors.joining(", "));
    String sql =
        groups.stream().map(this::expression).collect(Collectors.joining(", ", "SELECT ", ", "))
            + keys
            + end
            + " ORDER BY "
            + keys;
    Object[] values = new Object[table.fields().size()];
    Sql.forEach(
        connection,
        sql,
        row -> {
          if (!read(row, values)) {
            readSlowly(connection, row, values);
          }
          taker.take(values);
        });
  }

  private boolean read(ResultSet row, Object[] values) throws SQLException {
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      if (group.number()) {
        values[group.first()] = Sql.real(row, g + 1);
      } else if (!split(row.getString(g + 1), group, values)) {
        return false;
      }
    }
    return true;
  }

  /** Whether there were exactly as many parts as columns. */
  private static boolean split(String text, Group group, Object[] values) {
    int from = 0;
    int last = group.first() + group.width() - 1;
    for (int i = group.first(); i < last; i++) {
      int to = text.indexOf(BETWEEN, from);
      if (to < 0) {
        return false;
      }
      values[i] = to == from ? null : text.substring(from, to);
      from = to + 1;
    }
    values[last] = from == text.length() ? null : text.substring(from);
    return text.indexOf(BETWEEN, from) < 0;
  }

  private void readSlowly(Connection connection, ResultSet wide, Object[] values)
      throws SQLException {
    List<String> key = table.key();
    Object[] keys = new Object[key.size()];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = wide.getObject(groups.size() + 1 + i);
    }
    String where =
        key.stream().map(name -> '"' + name + "\" = ?").collect(Collectors.joining(" AND "));
    Sql.forEach(
        connection,
        "SELECT *" + end + " WHERE " + where,
        row -> {
          for (int i = 0; i < values.length; i++) {
            boolean number = table.fields().get(i).type() == ArchiveTable.Type.NUMBER;
            values[i] = number ? Sql.real(row, i + 1) : (Object) row.getString(i + 1);
          }
        },
        keys);
  }
}
