package org.griplore.query.browse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.Revision;

/** Lists the files that were added, every reading of each. */
public final class SourcesQuestion implements Question<SourcesQuestion.SourceRow> {
  /**
   * One reading of a file.
   *
   * @param current whether its figures count
   * @param tests tests it tells of
   * @param findings findings made in it
   */
  public record SourceRow(
      int revision,
      String file,
      int number,
      boolean current,
      String form,
      long bytes,
      String added,
      int tests,
      int findings,
      String changes,
      String sha256,
      String origin) {}

  @Override
  public String kind() {
    return "sources";
  }

  @Override
  public String purpose() {
    return "Which files were added, when, and what was read from each";
  }

  @Override
  public String example() {
    return "sources";
  }

  @Override
  public List<Option> options() {
    return List.of();
  }

  @Override
  public Answer<SourceRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Map<Integer, TreeSet<Integer>> tests = new HashMap<>();
    for (ReportRecord report : evidence.reports()) {
      tests.computeIfAbsent(report.revision(), id -> new TreeSet<>()).add(report.test());
    }
    Map<Integer, Integer> findings = new HashMap<>();
    context
        .archive()
        .findings()
        .forEach(found -> findings.merge(found.revision(), 1, Integer::sum));
    List<SourceRow> rows =
        context.archive().revisions().stream()
            .map(
                revision ->
                    row(
                        revision,
                        context.archive().revisionChanges(revision.id()),
                        tests.getOrDefault(revision.id(), new TreeSet<>()).size(),
                        findings.getOrDefault(revision.id(), 0)))
            .toList();
    return Answer.to(new Inquiry(kind(), "Which files were added?", choices.given()))
        .summary(
            "%d files in %d readings."
                .formatted(rows.stream().filter(SourceRow::current).count(), rows.size()))
        .columns(columns())
        .rows(rows)
        .build();
  }

  private static SourceRow row(Revision revision, List<String> changes, int tests, int findings) {
    return new SourceRow(
        revision.id(),
        revision.name(),
        revision.number(),
        revision.supersededBy() == null,
        revision.form(),
        revision.bytes(),
        revision.addedAt().toString(),
        tests,
        findings,
        changes.isEmpty() ? null : String.join(" ", changes),
        revision.sha256(),
        revision.origin());
  }

  @Override
  public List<Column<SourceRow>> columns() {
    return List.of(
        Column.of("file", "File", Format.TEXT, SourceRow::file),
        Column.of("form", "Read as", Format.TEXT, SourceRow::form),
        Column.of("number", "Reading", Format.COUNT, SourceRow::number),
        Column.of("current", "Counts", Format.FLAG, SourceRow::current),
        Column.of("tests", "Tests", Format.COUNT, SourceRow::tests),
        Column.of("findings", "Findings", Format.COUNT, SourceRow::findings),
        Column.of("bytes", "Bytes", Format.COUNT, SourceRow::bytes),
        Column.of("added", "Added", Format.DATE, SourceRow::added),
        Column.<SourceRow>of("changes", "What changed", Format.TEXT, SourceRow::changes).asDetail(),
        Column.<SourceRow>of("revision", "Revision", Format.COUNT, SourceRow::revision).asDetail(),
        Column.<SourceRow>of("sha256", "SHA-256", Format.TEXT, SourceRow::sha256).asDetail(),
        Column.<SourceRow>of("origin", "Read from", Format.TEXT, SourceRow::origin).asDetail());
  }
}
