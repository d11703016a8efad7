package org.griplore.ui.web.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.table.ComparedFigure;
import org.griplore.query.table.TableRow;
import org.griplore.query.table.WeightedTotal;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.Shown;
import org.griplore.ui.render.TerminalStyle;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.link.Symbols;
import org.griplore.ui.web.page.TableView;

/**
 * A comparison table as its page lays it out.
 *
 * @param heads heads of the columns behind the tyres'
 * @param rows the tyres
 * @param markdown the whole answer as Markdown, to copy
 * @param weighted whether the last column is the weighted total
 */
public record ComparisonView(List<Head> heads, List<Row> rows, String markdown, boolean weighted) {
  /** A column's name, and the unit of its values; empty where there are none. */
  public record Head(String name, String unit) {}

  /** A tyre, why it is there, its notes and its cells. */
  public record Row(
      String model, String address, String role, List<Integer> notes, List<Cell> cells) {}

  /**
   * A cell.
   *
   * @param basis {@code measured}, {@code expected} or {@code none}
   * @param value what it says; an en dash without evidence
   * @param address the evidence behind it; null without any
   * @param measured what was measured, where that is not the value shown; else null
   * @param place words like {@code 2nd}; null without one
   * @param difference with sign and unit; null without one
   * @param interval of the difference, in words; null without one
   * @param drawing the interval drawn on the column's scale; null without one
   * @param notes numbers of its footnotes
   */
  public record Cell(
      String basis,
      String value,
      String address,
      String measured,
      String place,
      String difference,
      String interval,
      IntervalDrawing drawing,
      List<Integer> notes) {}

  public static ComparisonView of(Answer<TableRow> answer) {
    List<TableRow> rows = answer.rows();
    List<Head> heads = new ArrayList<>();
    List<List<Cell>> columns = new ArrayList<>();
    for (Column<?> column : answer.columns()) {
      if (column.format() == Format.FIGURE) {
        String unit = column.sense().unit();
        heads.add(new Head(column.title(), unit == null ? "" : Symbols.set(unit)));
        columns.add(cells(answer.inquiry(), column, rows));
      }
    }
    boolean weighted = !rows.isEmpty() && rows.get(0).total() != null;
    if (weighted) {
      heads.add(new Head("Weighted total", "spreads"));
      columns.add(totals(rows.stream().map(TableRow::total).toList()));
    }
    List<Row> told = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      int row = i;
      told.add(
          new Row(
              rows.get(i).model(),
              Addresses.model(rows.get(i).model()),
              rows.get(i).role().equals("asked") ? null : rows.get(i).role(),
              rows.get(i).footnotes(),
              columns.stream().map(column -> column.get(row)).toList()));
    }
    return new ComparisonView(
        heads, told, OutputFormat.MARKDOWN.text(answer, TerminalStyle.PLAIN), weighted);
  }

  private static List<Cell> cells(Inquiry inquiry, Column<?> column, List<TableRow> rows) {
    List<ComparedFigure> figures =
        rows.stream().map(row -> row.figures().get(column.key())).toList();
    IntervalDrawing.Frame frame =
        IntervalDrawing.frame(
            figures.stream().flatMap(f -> Stream.of(f.delta(), f.low(), f.high())));
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      ComparedFigure figure = figures.get(i);
      cells.add(
          new Cell(
              figure.basis(),
              value(figure, column.decimals()),
              address(inquiry, rows.get(i).model(), figure),
              measured(figure, column.decimals()),
              figure.place() == null || figure.value() == null
                  ? null
                  : TableView.ordinal(figure.place()),
              figure.delta() == null ? null : difference(figure),
              interval(figure.low(), figure.high(), 1),
              frame.draw(figure.low(), figure.delta(), figure.high()),
              figure.footnotes()));
    }
    return cells;
  }

  /** The value, or else the place, which is then all that is known beside the difference. */
  private static String value(ComparedFigure figure, int decimals) {
    if (figure.value() != null) {
      return Shown.number(figure.value(), decimals);
    }
    return figure.place() == null ? Shown.MISSING : TableView.ordinal(figure.place());
  }

  private static String measured(ComparedFigure figure, int decimals) {
    String measured = figure.measured() == null ? null : Shown.number(figure.measured(), decimals);
    return measured == null || measured.equals(value(figure, decimals)) ? null : measured;
  }

  private static String difference(ComparedFigure figure) {
    return Shown.delta(figure.delta(), 1) + ("%".equals(figure.deltaUnit()) ? "\u00a0%" : "");
  }

  private static String interval(Double low, Double high, int decimals) {
    return low == null || high == null
        ? null
        : Shown.delta(low, decimals) + " to " + Shown.delta(high, decimals);
  }

  /** One result leads to its cell, a difference to the two tyres, all else to the tyre's tests. */
  private static String address(Inquiry inquiry, String model, ComparedFigure figure) {
    if (figure.basis().equals("none")) {
      return null;
    }
    if (figure.result() != null) {
      return Addresses.result(figure.result());
    }
    boolean compared = figure.to() != null && !figure.to().equals(model);
    Map<String, List<String>> options = new LinkedHashMap<>();
    options.put("model", compared ? List.of(model, figure.to()) : List.of(model));
    options.put("discipline", List.of(figure.discipline()));
    for (String filter : List.of("season", "segment", "from", "to", "source")) {
      if (inquiry.options().containsKey(filter)) {
        options.put(filter, inquiry.options().get(filter));
      }
    }
    return Addresses.of(compared ? "contrast" : "tests", options);
  }

  private static List<Cell> totals(List<WeightedTotal> totals) {
    IntervalDrawing.Frame frame =
        IntervalDrawing.frame(
            totals.stream().flatMap(t -> Stream.of(t.value(), t.low(), t.high())));
    return totals.stream()
        .map(
            t ->
                new Cell(
                    t.value() == null ? "none" : "total",
                    t.value() == null ? Shown.MISSING : Shown.delta(t.value(), 2),
                    null,
                    null,
                    t.place() == null ? null : TableView.ordinal(t.place()),
                    t.leftOut().isEmpty() ? null : "without " + String.join(", ", t.leftOut()),
                    interval(t.low(), t.high(), 2),
                    frame.draw(t.low(), t.value(), t.high()),
                    List.of()))
        .toList();
  }
}
