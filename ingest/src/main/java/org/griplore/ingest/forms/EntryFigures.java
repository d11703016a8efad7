package org.griplore.ingest.forms;

import java.util.List;
import java.util.Optional;
import org.griplore.ingest.recognise.ReadFigure;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;

/** The figures of one tyre in one discipline, gathered from several columns. */
final class EntryFigures {
  private ReadFigure value;
  private Cell valueCell;
  private Double spread;
  private Cell spreadCell;
  private Integer runs;
  private Cell runsCell;
  private Integer place;
  private Cell placeCell;

  void value(ReadFigure figure, Cell at) {
    value = figure;
    valueCell = at;
  }

  /** In the unit that the value is stated in. */
  void spread(double given, Cell at) {
    spread = given;
    spreadCell = at;
  }

  void runs(int given, Cell at) {
    runs = given;
    runsCell = at;
  }

  void place(int given, Cell at) {
    place = given;
    placeCell = at;
  }

  /** The result; empty when there is neither value nor place. */
  Optional<Result> result(Discipline discipline) {
    if (value == null && place == null) {
      return Optional.empty();
    }
    boolean spreads = value != null && spread != null && value.given().convertsTo(value.unit());
    return Optional.of(
        new Result(
            discipline.key(),
            value == null ? null : (Double) value.value(),
            value == null ? null : value.unit(),
            spreads ? (Double) value.given().convert(spread, value.unit()) : null,
            value == null ? null : runs,
            place,
            new ResultCells(
                valueCell, spreads ? spreadCell : null, value == null ? null : runsCell, placeCell),
            value == null ? "" : value.rule(),
            value == null ? List.of() : value.steps()));
  }
}
