package org.griplore.query.tradeoff;

import java.util.List;
import java.util.function.Function;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;

/** What is told of each model. */
final class TradeoffColumns {
  private TradeoffColumns() {}

  static List<Column<TradeoffRow>> of(String x, String xUnit, String y, String yUnit) {
    return List.of(
        Column.of("model", "Model", Format.MODEL, TradeoffRow::model),
        delta("x", in(x, xUnit), TradeoffRow::x),
        Column.number("xSe", "SE", Format.NUMBER, 1, TradeoffRow::xSe),
        delta("xLow", "from", TradeoffRow::xLow).asDetail(),
        delta("xHigh", "to", TradeoffRow::xHigh).asDetail(),
        delta("y", in(y, yUnit), TradeoffRow::y),
        Column.number("ySe", "SE", Format.NUMBER, 1, TradeoffRow::ySe),
        delta("yLow", "from", TradeoffRow::yLow).asDetail(),
        delta("yHigh", "to", TradeoffRow::yHigh).asDetail(),
        Column.of("front", "Front", Format.FLAG, TradeoffRow::front),
        Column.number("frontChance", "P(front)", Format.CHANCE, 2, TradeoffRow::frontChance),
        Column.of("tests", "With both", Format.COUNT, TradeoffRow::tests),
        Column.<TradeoffRow>of("older", "Follows", Format.MODEL, step(TradeoffStep::older))
            .asDetail(),
        delta("dx", "Step in " + x, step(TradeoffStep::dx)),
        delta("dxLow", "from", step(TradeoffStep::dxLow)).asDetail(),
        delta("dxHigh", "to", step(TradeoffStep::dxHigh)).asDetail(),
        delta("dy", "in " + y, step(TradeoffStep::dy)),
        delta("dyLow", "from", step(TradeoffStep::dyLow)).asDetail(),
        delta("dyHigh", "to", step(TradeoffStep::dyHigh)).asDetail(),
        Column.of("improvedBoth", "Improved both", Format.FLAG, step(TradeoffStep::improvedBoth)),
        log("logX", TradeoffRow::logX),
        log("logXSe", TradeoffRow::logXSe),
        log("logY", TradeoffRow::logY),
        log("logYSe", TradeoffRow::logYSe));
  }

  private static String in(String discipline, String unit) {
    return unit.isEmpty() ? discipline : discipline + ", " + unit;
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
