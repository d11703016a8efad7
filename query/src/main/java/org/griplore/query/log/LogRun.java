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
          logged("run", "Run", Format.COUNT, LoggedRun::run)
              .means("The run as numbered in the log."),
          number("fromKmh", "From", 2, LoggedRun::fromKmh)
              .in("km/h")
              .means("Speed at the start of the measured window."),
          number("toKmh", "To", 2, LoggedRun::toKmh).in("km/h").means("Speed at its end."),
          number("distanceM", "Distance", 2, LoggedRun::distanceM)
              .in("m")
              .means("Distance over the window as logged."),
          number("timeS", "Time", 3, LoggedRun::timeS)
              .in("s")
              .means("Time over the window as logged."),
          number("levelDb", "Level", 1, LoggedRun::levelDb)
              .in("dB(A)")
              .means("Sound level as logged."),
          number("value", "Value", 3, LoggedRun::value)
              .inUnitOf("valueUnit")
              .means("Any other value as logged."),
          logged(
                  "valueUnit",
                  "in",
                  Format.TEXT,
                  run -> run.unit() == null ? null : run.unit().symbol())
              .means("Unit of that value."),
          number("surfaceC", "Surface", 1, LoggedRun::surfaceC)
              .in("\u00b0C")
              .means("Temperature of the surface."),
          number("airC", "Air", 1, LoggedRun::airC).in("\u00b0C").means("Temperature of the air."),
          Column.number("figure", "Figure", Format.NUMBER, 4, LogRun::figure)
              .means("What the run goes into its set's mean with, in the set's unit."),
          Column.of("counts", "Counts", Format.FLAG, LogRun::counts)
              .means("Whether the run counts."),
          Column.of("said", "To be said", Format.TEXT, LogRun::said)
              .means("Why it does not count, or what is odd about it."),
          logged("remark", "Remark", Format.TEXT, LoggedRun::remark)
              .means("The remark in the log."),
          logged("row", "Row", Format.COUNT, run -> at(run.cell(), Cell::row))
              .means("The log's row."),
          logged("column", "Column", Format.COUNT, run -> at(run.cell(), Cell::column))
              .means("The log's column."));

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
