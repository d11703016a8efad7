package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.label.LabelClaim;
import org.griplore.query.label.Labels;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ResultOrigin;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.Cell;

/** Leads one figure back to the file, sheet, row and column it came from. */
public final class OriginQuestion implements Question<OriginQuestion.OriginRow> {
  /** What the tyre's label says in this discipline. */
  public static final WholeFigure<List<LabelClaim>> LABELS =
      new WholeFigure<>("labels", "What the tyre label's classes are beside the figure.");

  /**
   * One part of a result and its cell.
   *
   * @param part value, spread, runs or place
   * @param figure as the archive holds it
   * @param sheet empty when the file has one sheet only
   * @param row 1-based
   * @param column 1-based
   * @param steps of the value: from the text found to the figure and its difference; else empty
   */
  public record OriginRow(
      String part,
      Object figure,
      String unit,
      String file,
      String sheet,
      int row,
      int column,
      String found,
      String rule,
      String sha256,
      List<ProvenanceStep> steps) {}

  @Override
  public String kind() {
    return "origin";
  }

  @Override
  public String purpose() {
    return "Where one figure comes from: file, sheet, row, column and the text found there";
  }

  @Override
  public String example() {
    return "origin 17";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.arguments("result", "NUMBER", "the result's number, as answers give it", true));
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(LABELS);
  }

  @Override
  public Answer<OriginRow> answer(QueryContext context, Choices choices) {
    List<OriginRow> rows = new ArrayList<>();
    List<String> told = new ArrayList<>();
    List<String> caveats = new ArrayList<>();
    List<LabelClaim> labels = new ArrayList<>();
    for (String number : choices.all("result")) {
      if (!number.matches("\\d{1,18}")) {
        throw Choices.refusal("result", number, "a whole number");
      }
      context
          .archive()
          .originOf(Long.parseLong(number))
          .ifPresentOrElse(
              origin -> {
                rows.addAll(rows(origin, context.evidence()));
                told.add(sentence(origin));
                int at = Provenance.position(context.evidence(), origin.result());
                if (at >= 0) {
                  Labels.ofResult(context, at).ifPresent(labels::add);
                }
                if (origin.revision().supersededBy() != null) {
                  caveats.add(
                      "%s has been read again since: this figure is of revision %d."
                          .formatted(origin.revision().name(), origin.revision().number()));
                }
              },
              () -> told.add("The archive has no result number " + number + "."));
    }
    labels.stream().map(LabelClaim::sentence).forEach(caveats::add);
    return Answer.to(new Inquiry(kind(), "Where does this figure come from?", choices.given()))
        .summary(String.join(" ", told))
        .columns(columns())
        .rows(rows)
        .caveats(caveats)
        .whole(LABELS, labels)
        .build();
  }

  private static String sentence(ResultOrigin origin) {
    Cell cell = origin.cells().value() == null ? origin.cells().place() : origin.cells().value();
    String figure =
        origin.value() == null
            ? "place " + origin.place()
            : ProvenanceStep.told(origin.value()) + " " + origin.unit();
    String written =
        origin.nameFound() == null || origin.nameFound().equals(origin.model())
            ? ""
            : " (written \"" + origin.nameFound() + "\")";
    return "%s%s, %s in test %s: %s, from %s, %s."
        .formatted(
            origin.model(),
            written,
            origin.discipline(),
            origin.test(),
            figure.strip(),
            origin.revision().name(),
            cell == null ? "no cell of its own" : cell.place());
  }

  private static List<OriginRow> rows(ResultOrigin origin, Evidence evidence) {
    List<OriginRow> rows = new ArrayList<>();
    List<ProvenanceStep> provenance = Provenance.of(origin, evidence);
    add(rows, origin, "value", origin.value(), origin.unit(), origin.cells().value(), provenance);
    List<ProvenanceStep> none = List.of();
    add(rows, origin, "spread", origin.spread(), origin.unit(), origin.cells().spread(), none);
    add(rows, origin, "runs", origin.runs(), null, origin.cells().runs(), none);
    add(rows, origin, "place", origin.place(), null, origin.cells().place(), none);
    return rows;
  }

  private static void add(
      List<OriginRow> rows,
      ResultOrigin origin,
      String part,
      Object figure,
      String unit,
      Cell cell,
      List<ProvenanceStep> steps) {
    if (figure == null || cell == null) {
      return;
    }
    Revision revision = origin.revision();
    rows.add(
        new OriginRow(
            part,
            figure,
            unit,
            revision.name(),
            cell.sheet(),
            cell.row(),
            cell.column(),
            cell.found(),
            part.equals("value") && !origin.rule().isEmpty() ? origin.rule() : null,
            revision.sha256(),
            steps));
  }

  @Override
  public List<Column<OriginRow>> columns() {
    return List.of(
        Column.of("part", "Part", Format.TEXT, OriginRow::part)
            .means("Which part of the result: value, spread, runs or place."),
        Column.of("figure", "Figure", Format.TEXT, OriginRow::figure)
            .inUnitOf("unit")
            .means("The figure as the archive holds it."),
        Column.of("unit", "Unit", Format.UNIT, OriginRow::unit).means("Its unit."),
        Column.of("file", "File", Format.TEXT, OriginRow::file).means("The file."),
        Column.of("sheet", "Sheet", Format.TEXT, OriginRow::sheet)
            .means("The sheet; empty when the file has one only."),
        Column.of("row", "Row", Format.COUNT, OriginRow::row).means("Row in the sheet, from 1."),
        Column.of("column", "Column", Format.COUNT, OriginRow::column)
            .means("Column in the sheet, from 1."),
        Column.of("found", "Text found", Format.TEXT, OriginRow::found).means("The text as found."),
        Column.of("rule", "Rule", Format.TEXT, OriginRow::rule).means("How the text was read."),
        Column.<OriginRow>of("sha256", "SHA-256", Format.TEXT, OriginRow::sha256)
            .means("The file's SHA-256, in hexadecimal.")
            .asDetail(),
        Column.rows("steps", "Steps", ProvenanceStep.COLUMNS, OriginRow::steps)
            .means("The way from the text found to the figure, and on to its difference."));
  }
}
