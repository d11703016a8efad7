package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/** Loads entries and results of current revisions into arrays, row by row without objects. */
public final class ColumnLoader {
  private static final String CURRENT_ENTRIES =
      " FROM entry e JOIN report p ON p.id = e.report_id"
          + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL";

  /**
   * Each column that is fetched costs more than the reading of a row: small whole numbers come
   * packed into one (the entry above 32 bits, the discipline above 16, the unit; the runs above 40,
   * the place above 20, the repeat; the circumstance above 40, the result's number), and a spread
   * that is not stated comes as infinity.
   */
  private static final String PACKED_RESULTS =
      "SELECT (entry_id << 32) | (discipline_id << 16) | coalesce(unit_id, 0),"
          + " (coalesce(runs, 0) << 40) | (coalesce(place, 0) << 20) | repeat,"
          + " coalesce(spread, 9e999), value, (circumstance_id << 40) | id"
          + " FROM result ORDER BY id";

  private static final long IDS = (1L << 40) - 1;
  private static final long COUNTS = (1L << 20) - 1;

  private final Connection connection;
  private final int[] disciplines;
  private final int[] units;
  private final int[] circumstances;
  private int[] entryPositions = new int[0];

  public ColumnLoader(
      Connection connection,
      Map<Integer, Integer> disciplines,
      Map<Integer, Integer> units,
      Map<Integer, Integer> circumstances) {
    this.connection = connection;
    this.disciplines = lookup(disciplines);
    this.units = lookup(units);
    this.circumstances = lookup(circumstances);
  }

  private static int[] lookup(Map<Integer, Integer> positions) {
    int[] byNumber =
        new int[positions.keySet().stream().mapToInt(Integer::intValue).max().orElse(0) + 1];
    Arrays.fill(byNumber, -1);
    positions.forEach((number, position) -> byNumber[number] = position);
    return byNumber;
  }

  public EntryColumns entries(
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
    TyreState[] state = new TyreState[count];
    Variant[] variant = new Variant[count];
    OneEntry sameEntry = new OneEntry(connection);
    try (PreparedStatement statement =
            connection.prepareStatement(
                "SELECT e.id, e.report_id, e.model_id, e.size, e.*"
                    + CURRENT_ENTRIES
                    + " ORDER BY e.id");
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
        state[i] = EntryKind.state(rows);
        variant[i] = EntryKind.variant(rows);
        i++;
      }
      count = i;
    }
    return new EntryColumns(
        Arrays.copyOf(test, count),
        Arrays.copyOf(model, count),
        Arrays.copyOf(report, count),
        Arrays.copyOf(size, count),
        Arrays.copyOf(state, count),
        Arrays.copyOf(variant, count));
  }

  /** Reads the whole table in its own order and leaves out what is not current. */
  public ResultColumns results() throws SQLException {
    int most = (int) Sql.number(connection, "SELECT count(*) FROM result");
    long[] id = new long[most];
    int[] entry = new int[most];
    short[] discipline = new short[most];
    short[] unit = new short[most];
    double[] value = new double[most];
    double[] spread = new double[most];
    int[] runs = new int[most];
    int[] place = new int[most];
    int[] circumstance = new int[most];
    short[] repeat = new short[most];
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
        long number = rows.getLong(5);
        id[count] = number & IDS;
        circumstance[count] = circumstances[(int) (number >> 40)];
        repeat[count] = (short) (counts & COUNTS);
        entry[count] = position;
        discipline[count] = (short) disciplines[(int) (what >> 16) & 0xffff];
        unit[count] = unitNumber == 0 ? -1 : (short) units[unitNumber];
        value[count] = unitNumber == 0 ? Double.NaN : rows.getDouble(4);
        spread[count] = Double.isInfinite(stated) ? Double.NaN : stated;
        runs[count] = (int) (counts >> 40);
        place[count] = (int) (counts >> 20 & COUNTS);
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
        Arrays.copyOf(place, count),
        Arrays.copyOf(circumstance, count),
        Arrays.copyOf(repeat, count));
  }
}
