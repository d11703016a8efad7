package org.griplore.query.tradeoff;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.store.vocabulary.Direction;

/** What is told of each model. */
final class TradeoffColumns {
  private TradeoffColumns() {}

  static List<Column<TradeoffRow>> of(String x, String xUnit, String y, String yUnit) {
    return List.of(
        Column.of("model", "Model", Format.MODEL, TradeoffRow::model),
        delta("x", x, TradeoffRow::x)
            .in(xUnit)
            .means(
                "Against the mean of the models shown, in the first discipline, plus is better."),
        Column.number("xSe", "SE", Format.NUMBER, 1, TradeoffRow::xSe)
            .in(xUnit)
            .better(Direction.LOW)
            .means("Its standard error."),
        delta("xLow", "from", TradeoffRow::xLow)
            .in(xUnit)
            .means("Lower end of its 95 % interval.")
            .asDetail(),
        delta("xHigh", "to", TradeoffRow::xHigh)
            .in(xUnit)
            .means("Upper end of its 95 % interval.")
            .asDetail(),
        delta("y", y, TradeoffRow::y).in(yUnit).means("The same in the second discipline."),
        Column.number("ySe", "SE", Format.NUMBER, 1, TradeoffRow::ySe)
            .in(yUnit)
            .better(Direction.LOW)
            .means("Its standard error."),
        delta("yLow", "from", TradeoffRow::yLow)
            .in(yUnit)
            .means("Lower end of its 95 % interval.")
            .asDetail(),
        delta("yHigh", "to", TradeoffRow::yHigh)
            .in(yUnit)
            .means("Upper end of its 95 % interval.")
            .asDetail(),
        Column.of("front", "Front", Format.FLAG, TradeoffRow::front)
            .means("Whether no other model is at least as good in both and better in one."),
        Column.number("frontChance", "P(front)", Format.CHANCE, 2, TradeoffRow::frontChance)
            .better(Direction.HIGH)
            .means("How surely, given the errors of the estimates, from 0 to 1."),
        Column.of("tests", "With both", Format.COUNT, TradeoffRow::tests)
            .means("Tests that had the model in both disciplines."),
        Column.<TradeoffRow>of("older", "Follows", Format.MODEL, step(TradeoffStep::older))
            .means("The model it follows.")
            .asDetail(),
        delta("dx", "Step, " + lower(x), step(TradeoffStep::dx))
            .in(xUnit)
            .means("Its gain over the model it follows in the first discipline."),
        delta("dxLow", "from", step(TradeoffStep::dxLow))
            .in(xUnit)
            .means("Lower end of its 95 % interval.")
            .asDetail(),
        delta("dxHigh", "to", step(TradeoffStep::dxHigh))
            .in(xUnit)
            .means("Upper end of its 95 % interval.")
            .asDetail(),
        delta("dy", lower(y), step(TradeoffStep::dy))
            .in(yUnit)
            .means("The same in the second discipline."),
        delta("dyLow", "from", step(TradeoffStep::dyLow))
            .in(yUnit)
            .means("Lower end of its 95 % interval.")
            .asDetail(),
        delta("dyHigh", "to", step(TradeoffStep::dyHigh))
            .in(yUnit)
            .means("Upper end of its 95 % interval.")
            .asDetail(),
        Column.<TradeoffRow>of(
                "improvedBoth", "Improved both", Format.FLAG, step(TradeoffStep::improvedBoth))
            .means("Whether both gains are surely above zero; missing where that cannot be told."),
        log("logX", TradeoffRow::logX)
            .means("Natural log behind a figure in per cent, first discipline."),
        log("logXSe", TradeoffRow::logXSe).means("Its standard error."),
        log("logY", TradeoffRow::logY)
            .means("Natural log behind a figure in per cent, second discipline."),
        log("logYSe", TradeoffRow::logYSe).means("Its standard error."));
  }

  private static String lower(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  private static Column<TradeoffRow> delta(
      String key, String label, Function<TradeoffRow, Object> value) {
    return Column.number(key, label, Format.DELTA, 1, value);
  }

  private static Column<TradeoffRow> log(String key, Function<TradeoffRow, Object> value) {
    return Column.number(key, key, Format.NUMBER, 4, value).asDetail();
  }

  private static Function<TradeoffRow, Object> step(Function<TradeoffStep, Object> of) {
    return row -> row.step() == null ? null : of.apply(row.step());
  }
}
