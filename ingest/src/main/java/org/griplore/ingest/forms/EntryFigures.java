package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.recognise.ReadFigure;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Circumstance;
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
  private final List<ReadFigure> single = new ArrayList<>();
  private Cell firstRun;

  void value(ReadFigure figure, Cell at) {
    value = figure;
    valueCell = at;
  }

  /** One of several runs, of which the mean counts where no mean is told. */
  void run(ReadFigure figure, Cell at) {
    single.add(figure);
    firstRun = firstRun == null ? at : firstRun;
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
  Optional<Result> result(Discipline discipline, Circumstance circumstance) {
    if (value == null && !single.isEmpty()) {
      return Optional.of(mean(discipline).under(circumstance));
    }
    if (value == null && place == null) {
      return Optional.empty();
    }
    Integer counted = runs == null && !single.isEmpty() ? (Integer) single.size() : runs;
    boolean spreads = value != null && spread != null && value.given().convertsTo(value.unit());
    return Optional.of(
        new Result(
                discipline.key(),
                value == null ? null : (Double) value.value(),
                value == null ? null : value.unit(),
                spreads ? (Double) value.given().convert(spread, value.unit()) : null,
                value == null ? null : counted,
                place,
                new ResultCells(
                    valueCell,
                    spreads ? spreadCell : null,
                    value == null ? null : runsCell,
                    placeCell),
                value == null ? "" : value.rule(),
                value == null ? List.of() : value.steps())
            .under(circumstance));
  }

  /** The mean of the runs and their standard deviation with n - 1. */
  private Result mean(Discipline discipline) {
    double sum = 0;
    StringBuilder texts = new StringBuilder();
    for (ReadFigure run : single) {
      sum += run.value();
      texts.append(texts.isEmpty() ? "" : ", ").append(run.cell().text());
    }
    double mean = sum / single.size();
    double squares = 0;
    for (ReadFigure run : single) {
      squares += (run.value() - mean) * (run.value() - mean);
    }
    Double scatter =
        single.size() < 2 ? null : (Double) rounded(Math.sqrt(squares / (single.size() - 1)));
    return new Result(
        discipline.key(),
        rounded(mean),
        single.get(0).unit(),
        scatter,
        single.size(),
        place,
        new ResultCells(firstRun, null, null, placeCell),
        "mean of " + single.size() + " runs: " + texts,
        List.of());
  }

  private static double rounded(double value) {
    return Math.round(value * 1e10) / 1e10;
  }
}
