package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Wording;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.query.retold.ToldTwice;
import org.griplore.query.retold.ToldTwice.DifferingCell;

/** Lists tests that look like one told twice, with the figures in which the two differ. */
public final class RetoldQuestion implements Question<RetoldQuestion.RetoldRow> {
  /**
   * Two tests.
   *
   * @param test key of the one that counts
   * @param retold key of the other
   * @param likeness in what they are alike, or that somebody decided
   * @param models models that both have
   * @param figures figures that both have
   * @param alike how many of them are alike
   * @param differing the others
   */
  public record RetoldRow(
      String test,
      String retold,
      String likeness,
      int models,
      int figures,
      int alike,
      List<DifferingFigure> differing) {}

  /** A figure that the two tell differently; null where one tells a place only. */
  public record DifferingFigure(
      String model, String discipline, Double value, Double retold, long result, long other) {}

  @Override
  public String kind() {
    return "retold";
  }

  @Override
  public String purpose() {
    return "Which tests look like one that two reports tell, and in which figures they differ";
  }

  @Override
  public String example() {
    return "retold";
  }

  @Override
  public List<Option> options() {
    return List.of();
  }

  @Override
  public Answer<RetoldRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    List<RetoldRow> rows = new ArrayList<>();
    evidence.toldTwice().pairs().forEach(pair -> rows.add(row(evidence, pair)));
    return Answer.to(
            new Inquiry(kind(), "Which tests look like one that is told twice?", choices.given()))
        .summary(
            rows.isEmpty()
                ? "No two tests look like one."
                : Wording.counted(rows.size(), "pair")
                    + " of tests; each counts once until it is decided.")
        .columns(columns())
        .rows(rows)
        .caveats(
            rows.isEmpty()
                ? List.of()
                : List.of(
                    "`griplore settle TEST TEST --two-tests` lets both count, `--same-test` keeps"
                        + " them one."))
        .build();
  }

  private static RetoldRow row(Evidence evidence, ToldTwice pair) {
    return new RetoldRow(
        evidence.tests().get(pair.first()).key(),
        evidence.tests().get(pair.second()).key(),
        pair.likeness().words(),
        pair.models(),
        pair.cells(),
        pair.alike(),
        pair.differing().stream().map(cell -> figure(evidence, cell)).toList());
  }

  private static DifferingFigure figure(Evidence evidence, DifferingCell cell) {
    return new DifferingFigure(
        evidence.models().get(cell.model()).name(),
        evidence.disciplines().get(cell.discipline()),
        value(evidence, cell.firstResult()),
        value(evidence, cell.secondResult()),
        evidence.results().id()[cell.firstResult()],
        evidence.results().id()[cell.secondResult()]);
  }

  private static Double value(Evidence evidence, int result) {
    double value = evidence.results().value()[result];
    return Double.isNaN(value) ? null : (Double) value;
  }

  @Override
  public List<Column<RetoldRow>> columns() {
    List<Column<DifferingFigure>> inner =
        List.of(
            Column.of("model", "Model", Format.MODEL, DifferingFigure::model),
            Column.of("discipline", "Discipline", Format.DISCIPLINE, DifferingFigure::discipline),
            Column.number("value", "First", Format.NUMBER, 2, DifferingFigure::value)
                .means("What the test that counts tells."),
            Column.number("retold", "Again", Format.NUMBER, 2, DifferingFigure::retold)
                .means("What the other tells."),
            Column.of("result", "Result", Format.RESULT, DifferingFigure::result),
            Column.of("other", "Other result", Format.RESULT, DifferingFigure::other));
    return List.of(
        Column.of("test", "Test", Format.TEST, RetoldRow::test),
        Column.of("retold", "Told again", Format.TEST, RetoldRow::retold)
            .means("The test that does not count until it is decided."),
        Column.of("likeness", "Alike in", Format.TEXT, RetoldRow::likeness)
            .means("In what the two are alike, or that somebody decided."),
        Column.of("models", "Models", Format.COUNT, RetoldRow::models)
            .means("Models that both have."),
        Column.of("figures", "Figures", Format.COUNT, RetoldRow::figures)
            .means("Figures that both have."),
        Column.of("alike", "Alike", Format.COUNT, RetoldRow::alike)
            .means("Figures that are alike."),
        Column.rows("differing", "Differ", inner, RetoldRow::differing)
            .means("Figures that are not."));
  }
}
