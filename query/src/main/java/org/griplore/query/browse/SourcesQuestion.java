package org.griplore.query.browse;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.Revision;

/** Lists the files that were added, every revision of each. */
public final class SourcesQuestion implements Question<SourcesQuestion.SourceRow> {
  /**
   * One revision of a file.
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
            "%d files in %d revisions."
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

  private static Lead revision(SourceRow row) {
    return Lead.to("revision").with("revision", String.valueOf(row.revision()));
  }

  @Override
  public List<Column<SourceRow>> columns() {
    return List.of(
        Column.of("file", "File", Format.TEXT, SourceRow::file)
            .means("The file.")
            .leadingTo((row, asked) -> revision(row)),
        Column.of("form", "Read as", Format.TEXT, SourceRow::form).means("What it was read as."),
        Column.of("number", "Revision", Format.COUNT, SourceRow::number)
            .means("Which revision of the file it is, from 1.")
            .leadingTo((row, asked) -> revision(row)),
        Column.of("current", "Counts", Format.FLAG, SourceRow::current)
            .means("Whether its figures count."),
        Column.of("tests", "Tests", Format.COUNT, SourceRow::tests).means("Tests it tells of."),
        Column.of("findings", "Findings", Format.COUNT, SourceRow::findings)
            .means("Findings made in it.")
            .leadingTo(
                (row, asked) ->
                    row.current() && row.findings() > 0
                        ? Lead.to("findings").with("file", row.file())
                        : null),
        Column.of("bytes", "Bytes", Format.COUNT, SourceRow::bytes)
            .in("B")
            .means("Size of the file."),
        Column.of("added", "Added", Format.DATE, SourceRow::added).means("When it was added."),
        Column.<SourceRow>of("changes", "What changed", Format.TEXT, SourceRow::changes)
            .means("What changed against the revision before.")
            .asDetail(),
        Column.<SourceRow>of("revision", "Number", Format.COUNT, SourceRow::revision)
            .means("Number of the revision in the archive.")
            .asDetail(),
        Column.<SourceRow>of("sha256", "SHA-256", Format.TEXT, SourceRow::sha256)
            .means("The file's SHA-256, in hexadecimal.")
            .asDetail(),
        Column.<SourceRow>of("origin", "Read from", Format.TEXT, SourceRow::origin)
            .means("The path it was read from.")
            .asDetail());
  }
}
