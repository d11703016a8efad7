package org.griplore.query.browse;

import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.DraftRecord;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.ProposedReading;

/** Lists tables that could not be decided on, with the best reading and the second. */
public final class DraftsQuestion implements Question<DraftRecord> {
  @Override
  public String kind() {
    return "drafts";
  }

  @Override
  public String purpose() {
    return "Tables that wait for a decision, with the readings that are proposed";
  }

  @Override
  public String example() {
    return "drafts";
  }

  @Override
  public List<Option> options() {
    return List.of();
  }

  @Override
  public Answer<DraftRecord> answer(QueryContext context, Choices choices) {
    List<DraftRecord> rows =
        context.archive().drafts().stream()
            .filter(draft -> draft.state() == DraftRecord.State.OPEN)
            .toList();
    return Answer.to(new Inquiry(kind(), "Which tables wait for a decision?", choices.given()))
        .summary(
            rows.isEmpty()
                ? "No table waits for a decision."
                : (rows.size() == 1 ? "One table waits" : rows.size() + " tables wait")
                    + " for a decision: `griplore drafts --take N` takes the reading proposed, with"
                    + " `--second` the other.")
        .columns(columns())
        .rows(rows)
        .build();
  }

  @Override
  public List<Column<DraftRecord>> columns() {
    return List.of(
        Column.of("draft", "Draft", Format.COUNT, DraftRecord::id)
            .means("The draft's number, by which it is decided."),
        Column.of("source", "Source", Format.TEXT, DraftRecord::file).means("The file."),
        Column.<DraftRecord>of("where", "Where", Format.TEXT, row -> place(row.table()))
            .means("Sheet, row and column at which the table begins."),
        Column.<DraftRecord>of("reading", "Reading", Format.TEXT, row -> best(row).words())
            .means("How the table is read by the best reading."),
        Column.<DraftRecord>of("score", "Score", Format.COUNT, row -> Math.round(best(row).score()))
            .means("The sum of what speaks for and against it, about 100 when all is understood."),
        Column.<DraftRecord>of("second", "Second reading", Format.TEXT, DraftsQuestion::second)
            .means("How the table is read by the second reading, with its score."),
        Column.<DraftRecord>of(
                "reasons", "Reasons", Format.TEXT, row -> String.join("; ", best(row).reasons()))
            .means("What speaks for the best reading and against it."));
  }

  private static ProposedReading best(DraftRecord row) {
    return ProposedReading.of(row.table()).get(0);
  }

  private static String second(DraftRecord row) {
    List<ProposedReading> readings = ProposedReading.of(row.table());
    return readings.size() < 2
        ? null
        : readings.get(1).words() + " (" + Math.round(readings.get(1).score()) + ")";
  }

  private static String place(DraftTable table) {
    return new Cell(table.sheet(), table.firstRow(), table.firstColumn(), "").place();
  }
}
