package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/**
 * Settles the unit of each column of figures. A unit that is stated (in the header, in the cells or
 * beside the table) counts; otherwise one is assumed from the discipline and the figures, and said
 * so. A table of which no column states a unit and every column counts 1, 2, 3 ... holds places.
 */
public final class ColumnUnits {
  /** A unit or meaning that was assumed for a column. */
  public record Assumption(int column, String found, String assumed, String remedy) {}

  /** Something per something in brackets that is no unit we know: {@code (l/100 km)}. */
  private static final Pattern FOREIGN_UNIT =
      Pattern.compile("[(\\[]\\s*\\p{L}+\\s*/\\s*[^)\\]]+[)\\]]");

  private static final String REMEDY =
      "write the unit into the header, like \"Wet braking (m)\", if this is wrong";

  private final TableArea area;
  private final NumberReader numbers;
  private final Map<Integer, ColumnRole> roles = new LinkedHashMap<>();
  private final List<Assumption> assumptions = new ArrayList<>();
  private final Set<Integer> assumed = new HashSet<>();

  /**
   * Settles the units of a table.
   *
   * @param beside a unit stated beside the table for all its columns; null when there is none
   */
  public ColumnUnits(TableArea area, List<ColumnRole> found, NumberReader numbers, String beside) {
    this.area = area;
    this.numbers = numbers;
    Optional<Unit> forAll =
        beside == null
            ? Optional.empty()
            : UnitWords.ofText(beside).map(UnitWords.Recognised::unit);
    boolean places = forAll.isEmpty() && holdsPlaces(found);
    for (int column = 0; column < found.size(); column++) {
      if (found.get(column) instanceof ColumnRole.Value value) {
        roles.put(column, places ? place(column, value) : settled(column, value, forAll));
      }
    }
  }

  private ColumnRole place(int column, ColumnRole.Value value) {
    if (assumptions.isEmpty()) {
      assumptions.add(
          new Assumption(
              column,
              "columns of whole numbers from 1, without units",
              "places in each discipline",
              "write the unit into the header if these are values"));
    }
    return new ColumnRole.Place(value.discipline());
  }

  private boolean holdsPlaces(List<ColumnRole> found) {
    int columns = 0;
    for (int column = 0; column < found.size(); column++) {
      if (found.get(column) instanceof ColumnRole.Value value) {
        if (value.unit() != null || cellUnit(column).isPresent() || !countsFromOne(column)) {
          return false;
        }
        columns++;
      }
    }
    return columns > 0;
  }

  private boolean countsFromOne(int column) {
    double[] values = values(column).toArray();
    return values.length >= 2
        && DoubleStream.of(values).allMatch(v -> v == Math.rint(v) && v >= 1)
        && DoubleStream.of(values).min().orElse(0) == 1
        && DoubleStream.of(values).max().orElse(0) <= area.rows().size();
  }

  private DoubleStream values(int column) {
    return area.rows().stream()
        .map(row -> row.get(column))
        .filter(Objects::nonNull)
        .map(this::read)
        .filter(NumberReader.Reading.Number.class::isInstance)
        .mapToDouble(reading -> ((NumberReader.Reading.Number) reading).value());
  }

  private NumberReader.Reading read(GridCell cell) {
    return cell.number() != null
        ? new NumberReader.Reading.Number(cell.number(), Optional.empty(), "", false)
        : numbers.read(cell.text());
  }

  private Optional<Unit> cellUnit(int column) {
    return area.rows().stream()
        .map(row -> row.get(column))
        .filter(Objects::nonNull)
        .map(this::read)
        .filter(NumberReader.Reading.Number.class::isInstance)
        .map(reading -> ((NumberReader.Reading.Number) reading).unit())
        .flatMap(Optional::stream)
        .map(UnitWords.Recognised::unit)
        .findFirst();
  }

  private ColumnRole settled(int column, ColumnRole.Value value, Optional<Unit> forAll) {
    String header = area.heads().get(column).text();
    if (value.unit() != null) {
      boolean bare =
          value.unit() == Unit.PERCENT_OF_BEST
              && UnitWords.inHeader(header).filter(UnitWords.Recognised::assumed).isPresent();
      if (bare) {
        return perCent(column, value, header);
      }
      return value;
    }
    Optional<Unit> stated = forAll.or(() -> cellUnit(column));
    if (stated.isPresent() && value.discipline().accepts(stated.get())) {
      return new ColumnRole.Value(value.discipline(), stated.get());
    }
    Matcher foreign = FOREIGN_UNIT.matcher(header);
    if (stated.isPresent() || foreign.find()) {
      return new ColumnRole.Unknown();
    }
    Unit guess = guess(column, value, header);
    assumed.add(column);
    assumptions.add(
        new Assumption(column, header + ": no unit", "taken as " + guess.symbol(), REMEDY));
    return new ColumnRole.Value(value.discipline(), guess);
  }

  private ColumnRole perCent(int column, ColumnRole.Value value, String header) {
    double highest = values(column).max().orElse(0);
    Unit unit = highest > 100.0001 ? Unit.PERCENT_OF_REFERENCE : Unit.PERCENT_OF_BEST;
    assumptions.add(
        new Assumption(
            column,
            header,
            "taken as per cent "
                + (unit == Unit.PERCENT_OF_BEST ? "of the best" : "of a reference tyre")
                + ", more is better",
            "write \"% of best\" or \"% of reference\" into the header if this is wrong"));
    return new ColumnRole.Value(value.discipline(), unit);
  }

  private Unit guess(int column, ColumnRole.Value value, String header) {
    if (value.discipline().unit().dimension() != Dimension.POINTS) {
      return value.discipline().unit();
    }
    double highest = values(column).max().orElse(0);
    boolean mark = header.toLowerCase(java.util.Locale.ROOT).matches(".*(note|urteil).*");
    if (mark && highest <= 6) {
      return Unit.SCHOOL_MARK;
    }
    return highest > 10 ? Unit.POINTS_100 : Unit.POINTS_10;
  }

  /** The roles of the columns of figures, with their units settled, by column. */
  public Map<Integer, ColumnRole> roles() {
    return roles;
  }

  /** What was assumed. */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  /** Whether the unit of a column was assumed. */
  public boolean isAssumed(int column) {
    return assumed.contains(column);
  }
}
