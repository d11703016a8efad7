package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Loads entries and results of current revisions into arrays, row by row without objects. */
final class ColumnLoader {
  private static final String CURRENT_ENTRIES =
      " FROM entry e JOIN report p ON p.id = e.report"
          + " JOIN revision r ON r.id = p.revision AND r.superseded_by IS NULL";

  private final Connection connection;
  private final int[] disciplines;
  private final int[] units;
  private int[] entryPositions = new int[0];

  ColumnLoader(
      Connection connection, Map<Integer, Integer> disciplines, Map<Integer, Integer> units) {
    this.connection = connection;
    this.disciplines = lookup(disciplines);
    this.units = lookup(units);
  }

  private static int[] lookup(Map<Integer, Integer> positions) {
    int[] byNumber =
        new int[positions.keySet().stream().mapToInt(Integer::intValue).max().orElse(0) + 1];
    Arrays.fill(byNumber, -1);
    positions.forEach((number, position) -> byNumber[number] = position);
    return byNumber;
  }

  EntryColumns entries(
      List<ReportRecord> reports,
      Map<Integer, Integer> reportPositions,
      Map<Integer, Integer> modelPositions)
      throws SQLException {
    int count = (int) Sql.number(connection, "SELECT count(*)" + CURRENT_ENTRIES);
    int highest = (int) Sql.number(connection, "SELECT coalesce(max(id), 0) FROM entry");
    entryPositions = new int[highest + 1];
    Arrays.fill(entryPositions, -1);
    int[] test = new int[count];
    int[] model = new int[count];
    int[] report = new int[count];
    String[] size = new String[count];
    try (PreparedStatement statement =
            connection.prepareStatement(
                "SELECT e.id, e.report, e.model, e.size" + CURRENT_ENTRIES + " ORDER BY e.id");
        ResultSet rows = statement.executeQuery()) {
      for (int i = 0; rows.next(); i++) {
        entryPositions[rows.getInt(1)] = i;
        report[i] = reportPositions.get(rows.getInt(2));
        test[i] = reports.get(report[i]).test();
        model[i] = modelPositions.get(rows.getInt(3));
        size[i] = rows.getString(4);
      }
    }
    return new EntryColumns(test, model, report, size);
  }

  /** Reads the whole table in its own order and leaves out what is not current. */
  ResultColumns results() throws SQLException {
    int most = (int) Sql.number(connection, "SELECT count(*) FROM result");
    long[] id = new long[most];
    int[] entry = new int[most];
    short[] discipline = new short[most];
    short[] unit = new short[most];
    double[] value = new double[most];
    double[] spread = new double[most];
    int[] runs = new int[most];
    int[] place = new int[most];
    int count = 0;
    try (PreparedStatement statement =
            connection.prepareStatement(
                "SELECT id, entry, discipline, unit, value, spread, runs, place"
                    + " FROM result ORDER BY id");
        ResultSet rows = statement.executeQuery()) {
      while (rows.next()) {
        int position = entryPositions[rows.getInt(2)];
        if (position < 0) {
          continue;
        }
        id[count] = rows.getLong(1);
        entry[count] = position;
        discipline[count] = (short) disciplines[rows.getInt(3)];
        int unitNumber = rows.getInt(4);
        unit[count] = unitNumber == 0 ? -1 : (short) units[unitNumber];
        value[count] = unitNumber == 0 ? Double.NaN : rows.getDouble(5);
        double stated = rows.getDouble(6);
        spread[count] = stated == 0 && rows.wasNull() ? Double.NaN : stated;
        runs[count] = rows.getInt(7);
        place[count] = rows.getInt(8);
        count++;
      }
    }
    return new ResultColumns(
        Arrays.copyOf(id, count),
        Arrays.copyOf(entry, count),
        Arrays.copyOf(discipline, count),
        Arrays.copyOf(unit, count),
        Arrays.copyOf(value, count),
        Arrays.copyOf(spread, count),
        Arrays.copyOf(runs, count),
        Arrays.copyOf(place, count));
  }
}
