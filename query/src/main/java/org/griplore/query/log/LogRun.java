package org.griplore.query.log;

import java.util.List;
import java.util.function.Function;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * A run with what it goes into the mean with.
 *
 * @param run as logged
 * @param figure in the set's unit; null when it did not measure it or was not reduced
 * @param counts whether it counts; null when the log was not reduced
 * @param said why it does not count, or what is odd about it; null when nothing is
 */
public record LogRun(LoggedRun run, Double figure, Boolean counts, String said) {
  static final List<Column<LogRun>> COLUMNS =
      List.of(
          logged("run", "Run", Format.COUNT, LoggedRun::run),
          number("fromKmh", "From, km/h", 2, LoggedRun::fromKmh),
          number("toKmh", "To, km/h", 2, LoggedRun::toKmh),
          number("distanceM", "Distance, m", 2, LoggedRun::distanceM),
          number("timeS", "Time, s", 3, LoggedRun::timeS),
          number("levelDb", "Level, dB(A)", 1, LoggedRun::levelDb),
          number("value", "Value", 3, LoggedRun::value),
          logged(
              "valueUnit",
              "in",
              Format.TEXT,
              run -> run.unit() == null ? null : run.unit().symbol()),
          number("surfaceC", "Surface, \u00b0C", 1, LoggedRun::surfaceC),
          number("airC", "Air, \u00b0C", 1, LoggedRun::airC),
          Column.number("figure", "Figure", Format.NUMBER, 4, LogRun::figure),
          Column.of("counts", "Counts", Format.FLAG, LogRun::counts),
          Column.of("said", "To be said", Format.TEXT, LogRun::said),
          logged("remark", "Remark", Format.TEXT, LoggedRun::remark),
          logged("row", "Row", Format.COUNT, run -> at(run.cell(), Cell::row)),
          logged("column", "Column", Format.COUNT, run -> at(run.cell(), Cell::column)));

  private static Column<LogRun> logged(
      String key, String label, Format format, Function<LoggedRun, Object> of) {
    return Column.of(key, label, format, row -> of.apply(row.run()));
  }

  private static Column<LogRun> number(
      String key, String label, int decimals, Function<LoggedRun, Object> of) {
    return Column.number(key, label, Format.NUMBER, decimals, row -> of.apply(row.run()));
  }

  private static Object at(Cell cell, Function<Cell, Object> part) {
    return cell == null ? null : part.apply(cell);
  }
}
