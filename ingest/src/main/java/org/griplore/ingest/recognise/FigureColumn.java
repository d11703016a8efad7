package org.griplore.ingest.recognise;

import java.util.ArrayList;
import java.util.List;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.Unit;

/** The figures of one discipline's column, in the unit they are kept in. */
public final class FigureColumn {
  /** A figure that is so many times its column's is a slip of the decimal mark. */
  private static final double OFTEN = 6;

  /** So many times beyond what is usual is impossible. */
  private static final double BEYOND = 4;

  private final Discipline discipline;
  private final RawColumn raw;
  private final ColumnUnit unit;
  private final List<ReadFigure> figures = new ArrayList<>();

  FigureColumn(Discipline discipline, RawColumn raw, ColumnUnit unit) {
    this.discipline = discipline;
    this.raw = raw;
    this.unit = unit;
    boolean some = unit.unit() != null || unit.places() || raw.unitsInCells().size() > 1;
    for (int row = 0; row < raw.values.length; row++) {
      figures.add(raw.values[row] == null || !some ? null : figure(row));
    }
  }

  /** Whether the figures are places. */
  public boolean holdsPlaces() {
    return unit.places();
  }

  /** The figure of a row, from 0; null when there is none. Without a unit when it is a place. */
  public ReadFigure at(int row) {
    return figures.get(row);
  }

  /**
   * The unit of its figures as stated or assumed, {@code places}, or empty when none was decided.
   */
  public String unitWords() {
    return unit.places() ? "places" : unit.unit() == null ? "" : unit.unit().symbol();
  }

  /** The place that stands in brackets behind a row's figure; null where none does. */
  public Integer placeBeside(int row) {
    String aside = raw.asides[row];
    return aside == null || aside.startsWith("\u00b1") ? null : (Integer) raw.place(row);
  }

  /** The scatter behind a row's figure, as in {@code 36.5 \u00b1 0.4}, as written; else null. */
  public String spreadBeside(int row) {
    String aside = raw.asides[row];
    return aside == null || !aside.startsWith("\u00b1") ? null : aside.substring(1);
  }

  /** What was assumed, contradicted or not read. */
  public List<FoundThing> findings() {
    return raw.findings;
  }

  /** Why a figure cannot be one of its column's; null when it can. */
  private String strange(double value, Unit given) {
    if (discipline.scaleOf(given) != Scale.RATIO || given.dimension() == Dimension.RELATIVE) {
      return null;
    }
    double middle = raw.median();
    if (raw.count() > 2 && middle > 0 && (value > OFTEN * middle || value < middle / OFTEN)) {
      return "a figure near its column's, about "
          + RawColumn.plain(middle)
          + "; a decimal mark may be missing";
    }
    PlausibleRange range = PlausibleRange.of(discipline.key());
    if (!raw.isMarkSaid() && given.convertsTo(discipline.unit())) {
      double own = given.convert(value, discipline.unit());
      if (own < range.low() / BEYOND || own > range.high() * BEYOND) {
        return "a figure that is possible in "
            + discipline.key()
            + ", where "
            + discipline.unit().symbol()
            + " is the unit";
      }
    }
    return null;
  }

  private ReadFigure figure(int row) {
    double value = raw.values[row];
    if (unit.places()) {
      return new ReadFigure(value, null, null, raw.cells[row], raw.rules[row], List.of());
    }
    Unit own = raw.units[row];
    Unit given = unit.unit() == null || isClock(own) ? own : unit.unit();
    if (given == null) {
      return refused(row, Finding.Kind.CONFLICT, "a unit, as other cells of the column have one");
    }
    if (own != null && contradicts(own, given)) {
      return refused(row, Finding.Kind.CONFLICT, "the unit of its column, " + given.symbol());
    }
    if (!discipline.accepts(given)) {
      return refused(
          row,
          Finding.Kind.CONFLICT,
          "a unit of " + discipline.key() + ", like " + discipline.unit().symbol());
    }
    if (value <= 0 && discipline.scaleOf(given) == Scale.RATIO) {
      return refused(row, Finding.Kind.NOT_READ, "a value above zero");
    }
    String strange = strange(value, given);
    return strange == null ? kept(row, value, given) : refused(row, Finding.Kind.CONFLICT, strange);
  }

  /** A time written as 1:23.4 is in seconds, also under a head that says minutes. */
  private boolean isClock(Unit own) {
    return own == Unit.SECOND && unit.unit() == Unit.MINUTE;
  }

  /** A bare per cent sign or "points" leave open of what. */
  private static boolean contradicts(Unit own, Unit column) {
    return own != column
        && !(own == Unit.PERCENT_OF_BEST && column == Unit.PERCENT_OF_REFERENCE)
        && !(own == Unit.POINTS_10
            && (column == Unit.POINTS_100 || column == Unit.PERCENT_OF_BEST));
  }

  private ReadFigure refused(int row, Finding.Kind kind, String expected) {
    raw.findings.add(
        new FoundThing(
            kind,
            raw.cells[row],
            raw.cells[row].text(),
            expected + "; the figure was not taken",
            RawColumn.CORRECT));
    return null;
  }

  private ReadFigure kept(int row, double value, Unit given) {
    Unit kept = CanonicalUnit.of(discipline, given);
    FigureSteps steps =
        new FigureSteps(raw.rules[row], value, unit.isStated() ? given : Unit.NUMBER);
    switch (unit.turn()) {
      case NONE -> {
        if (!unit.isStated()) {
          steps.then(unit.rule(), value, given);
        }
      }
      case UPSIDE_DOWN -> steps.then(unit.rule(), 100.0 * 100.0 / value, given);
      case SHARE_OF_HIGHEST -> steps.then(unit.rule(), 100.0 * value / raw.max(), given);
    }
    steps.convert(kept);
    return new ReadFigure(steps.value(), kept, given, raw.cells[row], steps.rule(), steps.list());
  }
}
