package org.griplore.query.log;

import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.answer.Wording;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.TestKeys;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ReductionRecord;
import org.griplore.store.archive.RunRecord;
import org.griplore.store.archive.TestRecord;

/** Shows the runs of a test in order, what the reference did, and how far the results stand. */
public final class LogQuestion implements Question<LogRow> {
  /** What was made of the runs of each discipline. */
  public static final WholeFigure<List<LogReduced>> REDUCTIONS =
      new WholeFigure<>("reductions", "What was made of the runs of each discipline.");

  @Override
  public String kind() {
    return "log";
  }

  @Override
  public String purpose() {
    return "A test's runs in order, the reference over the day, and which limits held";
  }

  @Override
  public String example() {
    return "log own-2021-2 --discipline wet-braking";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.arguments("test", "KEY", "the test's key, as `tests` lists it", true),
        CommonOptions.discipline(null));
  }

  @Override
  public List<Column<LogRow>> columns() {
    return LogRow.COLUMNS;
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(REDUCTIONS);
  }

  @Override
  public Answer<LogRow> answer(QueryContext context, Choices choices) {
    if (choices.all("test").size() > 1) {
      throw Choices.refusal("test", String.join(", ", choices.all("test")), "one test");
    }
    Evidence evidence = context.evidence();
    TestRecord test = evidence.tests().get(TestKeys.position(evidence, choices.text("test")));
    String only =
        choices.has("discipline") ? CommonOptions.discipline(choices, context.catalogue()) : null;
    List<ReductionRecord> reductions =
        context.archive().reductions(test.id()).stream()
            .filter(record -> only == null || record.reduction().discipline().equals(only))
            .toList();
    List<RunRecord> runs =
        context.archive().runs(test.id()).stream()
            .filter(record -> only == null || record.run().discipline().equals(only))
            .toList();
    Citations citations = new Citations(evidence);
    test.reports().stream()
        .filter(
            at -> runs.stream().anyMatch(run -> run.report() == evidence.reports().get(at).id()))
        .forEach(citations::cite);
    List<LogRow> rows = LogRows.of(reductions, runs);
    return Answer.to(
            new Inquiry(
                kind(), "What did the runs of test " + test.key() + " say?", choices.given()))
        .summary(summary(test, rows, runs.size()))
        .columns(LogRow.COLUMNS)
        .rows(rows)
        .caveats(rows.isEmpty() ? List.of() : List.of(CommonOptions.RESULTS_HOLD))
        .sources(citations.list())
        .whole(REDUCTIONS, reductions.stream().map(LogReduced::of).toList())
        .build();
  }

  private static String summary(TestRecord test, List<LogRow> rows, int runs) {
    if (rows.isEmpty()) {
      return "The archive holds no logged runs of test " + test.key() + " that were asked for.";
    }
    long disciplines = rows.stream().map(LogRow::discipline).distinct().count();
    long broken = rows.stream().filter(row -> !row.reasons().isEmpty()).count();
    long candidates = rows.stream().filter(row -> !row.isReference()).count();
    return "%d runs of %d sets in %s, %d of them candidates; %s."
        .formatted(
            runs,
            rows.size(),
            Wording.counted(disciplines, "discipline"),
            candidates,
            broken == 0
                ? "no set breaks a limit it was judged by"
                : broken + (broken == 1 ? " set breaks a limit" : " sets break a limit"));
  }
}
