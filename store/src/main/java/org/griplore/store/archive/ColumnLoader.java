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

  /**
   * Each column that is fetched costs more than the reading of a row: small whole numbers come
   * packed into one (the entry above 32 bits, the discipline above 16, the unit; the runs above 32,
   * the place), and a spread that is not stated comes as infinity.
   */
  private static final String PACKED_RESULTS =
      "SELECT (entry << 32) | (discipline << 16) | coalesce(unit, 0),"
          + " (coalesce(runs, 0) << 32) | coalesce(place, 0), coalesce(spread, 9e999), value, id"
          + " FROM result ORDER BY id";

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
    OneEntry sameEntry = new OneEntry(connection);
    try (PreparedStatement statement =
            connection.prepareStatement(
                "SELECT e.id, e.report, e.model, e.size" + CURRENT_ENTRIES + " ORDER BY e.id");
        ResultSet rows = statement.executeQuery()) {
      int i = 0;
      while (rows.next()) {
        int together =
            sameEntry.with(
                rows.getInt(1),
                rows.getInt(2),
                rows.getInt(3),
                modelPositions.get(rows.getInt(3)),
                rows.getString(4));
        if (together != rows.getInt(1)) {
          entryPositions[rows.getInt(1)] = entryPositions[together];
          continue;
        }
        entryPositions[rows.getInt(1)] = i;
        report[i] = reportPositions.get(rows.getInt(2));
        test[i] = reports.get(report[i]).test();
        model[i] = modelPositions.get(rows.getInt(3));
        size[i] = rows.getString(4);
        i++;
      }
      count = i;
    }
    return new EntryColumns(
        Arrays.copyOf(test, count),
        Arrays.copyOf(model, count),
        Arrays.copyOf(report, count),
        Arrays.copyOf(size, count));
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
    try (PreparedStatement statement = connection.prepareStatement(PACKED_RESULTS);
        ResultSet rows = statement.executeQuery()) {
      while (rows.next()) {
        long what = rows.getLong(1);
        int position = entryPositions[(int) (what >> 32)];
        if (position < 0) {
          continue;
        }
        int unitNumber = (int) what & 0xffff;
        long counts = rows.getLong(2);
        double stated = rows.getDouble(3);
        id[count] = rows.getLong(5);
        entry[count] = position;
        discipline[count] = (short) disciplines[(int) (what >> 16) & 0xffff];
        unit[count] = unitNumber == 0 ? -1 : (short) units[unitNumber];
        value[count] = unitNumber == 0 ? Double.NaN : rows.getDouble(4);
        spread[count] = Double.isInfinite(stated) ? Double.NaN : stated;
        runs[count] = (int) (counts >> 32);
        place[count] = (int) counts;
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
