package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Unit;

/** Reads the figures of all columns of a table, each in its unit. */
public final class TableFigures {
  private final TableArea area;
  private final Map<Integer, FigureColumn> columns = new LinkedHashMap<>();
  private final List<FoundThing> findings = new ArrayList<>();

  /**
   * Reads a table.
   *
   * @param roles what each column holds
   * @param units units stated beside the table, by discipline
   * @param forAll a unit stated beside the table for all its columns; null when there is none
   * @param marksExplained whether a text beside the table says that 1 is the best mark
   * @param map what the user says of the columns
   * @param tyres which rows are tyres': what others hold is no figure of the column
   */
  public TableFigures(
      TableArea area,
      List<ColumnRole> roles,
      Map<String, Unit> units,
      Unit forAll,
      boolean marksExplained,
      ColumnMap map,
      boolean[] tyres) {
    this.area = area;
    DecimalMark mark = map.decimal() == null ? mark(roles) : map.decimal();
    int[] places = places(roles);
    Map<Integer, RawColumn> raw = new LinkedHashMap<>();
    for (int column = 0; column < roles.size(); column++) {
      ColumnRole.Value value = value(roles.get(column));
      if (value != null) {
        PlausibleRange range = PlausibleRange.of(value.discipline().key());
        raw.put(column, new RawColumn(area, column, map.decimal(), mark, range, tyres));
      }
    }
    TableFacts facts =
        new TableFacts(
            mark, units, forAll, places, marks(roles, raw, places), marksExplained, marked(roles));
    boolean ranksOnly = ranksOnly(roles, raw);
    raw.forEach(
        (column, figures) -> {
          ColumnRole.Value value = value(roles.get(column));
          TableArea.Head head = area.heads().get(column);
          ColumnMap.Rule rule = map.of(column + 1, head).orElse(null);
          ColumnUnit unit =
              new UnitDecision(facts, head, value, figures, rule)
                  .decide(
                      ranksOnly,
                      Agreement.withMeasured(column, value, raw, roles, area.rows().size()));
          FigureColumn read = new FigureColumn(value.discipline(), figures, unit);
          columns.put(column, read);
          findings.addAll(read.findings());
        });
  }

  private static boolean marked(List<ColumnRole> roles) {
    return roles.stream()
        .anyMatch(
            role -> role instanceof ColumnRole.Value value && value.unit() == Unit.SCHOOL_MARK);
  }

  /** Single runs are read like results; null for columns that hold neither. */
  private static ColumnRole.Value value(ColumnRole role) {
    if (role instanceof ColumnRole.Run run) {
      return new ColumnRole.Value(run.discipline(), run.unit(), null, run.setting());
    }
    return role instanceof ColumnRole.Value value ? value : null;
  }

  /** The decimal mark of the columns of figures together; open when they disagree. */
  private DecimalMark mark(List<ColumnRole> roles) {
    DecimalMark mark =
        DecimalMark.of(
            area.rows().stream()
                .flatMap(
                    row ->
                        java.util.stream.IntStream.range(0, roles.size())
                            .filter(column -> value(roles.get(column)) != null)
                            .mapToObj(row::get))
                .filter(Objects::nonNull)
                .filter(cell -> cell.number() == null && cell.text().length() < 30)
                .map(GridCell::text));
    return mark == DecimalMark.MIXED ? DecimalMark.OPEN : mark;
  }

  private int[] places(List<ColumnRole> roles) {
    int[] places = new int[area.rows().size()];
    for (int column = 0; column < roles.size(); column++) {
      if (roles.get(column) instanceof ColumnRole.Place place
          && place.discipline().key().equals("overall")) {
        for (int row = 0; row < places.length; row++) {
          GridCell cell = area.rows().get(row).get(column);
          places[row] = cell == null ? 0 : PlaceText.of(cell.text()).orElse(0);
        }
      }
    }
    return places;
  }

  private static int marks(List<ColumnRole> roles, Map<Integer, RawColumn> raw, int[] places) {
    List<Double[]> all = new ArrayList<>();
    List<Double[]> overall = new ArrayList<>();
    raw.forEach(
        (column, figures) -> {
          ColumnRole.Value value = value(roles.get(column));
          if (value.unit() == Unit.SCHOOL_MARK) {
            (value.discipline().key().equals("overall") ? overall : all).add(figures.values);
          }
        });
    return TableFacts.withPlaces(places, overall.isEmpty() ? all : overall);
  }

  /** At least two columns, and two in three, of those without a unit are rankings. */
  private boolean ranksOnly(List<ColumnRole> roles, Map<Integer, RawColumn> raw) {
    int without = 0;
    int ranked = 0;
    GridCell first = null;
    for (Map.Entry<Integer, RawColumn> column : raw.entrySet()) {
      ColumnRole.Value value = value(roles.get(column.getKey()));
      if (value.unit() == null && column.getValue().unitsInCells().isEmpty()) {
        without++;
        if (column.getValue().isRanking()) {
          ranked++;
          first = first == null ? area.heads().get(column.getKey()).cell() : first;
        }
      }
    }
    boolean ranks = ranked >= 2 && ranked * 3 >= without * 2;
    if (ranks) {
      findings.add(
          new FoundThing(
              Finding.Kind.ASSUMED,
              first,
              "columns of whole numbers from 1, without units",
              "places in each discipline",
              "if these are values, write the unit into the header, or say it in a map:"
                  + " `griplore add FILE --map MAP`"));
    }
    return ranks;
  }

  /** A column's figures; null when it holds none. */
  public FigureColumn column(int column) {
    return columns.get(column);
  }

  /** What was assumed, contradicted or not read, column by column. */
  public List<FoundThing> findings() {
    return findings;
  }
}
