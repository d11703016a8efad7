package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.FindingRecord;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.NameKey;

/** Lists what was not understood in the sources, or understood only by assuming something. */
public final class FindingsQuestion implements Question<FindingRecord> {
  private static final List<String> KINDS =
      Arrays.stream(Finding.Kind.values()).map(kind -> kind.key().replace(' ', '-')).toList();

  @Override
  public String kind() {
    return "findings";
  }

  @Override
  public String purpose() {
    return "What in the sources was not understood, or only by assuming something";
  }

  @Override
  public String example() {
    return "findings --sort not-read";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.repeated("sort", "SORT", "only findings of this sort").oneOf(KINDS),
        Option.once("file", "NAME", "only findings in this file", null));
  }

  @Override
  public Answer<FindingRecord> answer(QueryContext context, Choices choices) {
    List<String> kinds = choices.all("sort");
    String file = choices.text("file");
    Exclusions excluded = new Exclusions();
    List<FindingRecord> rows = new ArrayList<>();
    Set<String> decided =
        context.archive().decisions().stream()
            .filter(decision -> decision.topic() == Decision.Topic.MEANING)
            .map(Decision::key)
            .collect(Collectors.toSet());
    for (FindingRecord finding : context.archive().findings()) {
      String kind = finding.finding().kind().key().replace(' ', '-');
      if (!kinds.isEmpty() && !kinds.contains(kind)) {
        excluded.add("findings of another sort");
      } else if (file != null && !file.equals(finding.file())) {
        excluded.add("findings in other files");
      } else if (isOnName(finding.finding())
          && decided.contains(NameKey.of(finding.finding().found()))) {
        excluded.add("names that were decided since");
      } else {
        rows.add(finding);
      }
    }
    return Answer.to(new Inquiry(kind(), "What was not understood, or assumed?", choices.given()))
        .summary(rows.size() == 1 ? "One finding." : rows.size() + " findings.")
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .build();
  }

  /** A decided name is never asked about again. */
  private static boolean isOnName(Finding finding) {
    return finding.kind() == Finding.Kind.NEW_NAME
        || finding.kind() == Finding.Kind.ASSUMED && finding.remedy().contains("`griplore settle ");
  }

  @Override
  public List<Column<FindingRecord>> columns() {
    return List.of(
        Column.<FindingRecord>of("sort", "Sort", Format.TEXT, row -> row.finding().kind().key())
            .means("Whether something was assumed, not understood or odd."),
        Column.of("file", "File", Format.TEXT, FindingRecord::file).means("The file."),
        Column.<FindingRecord>of("where", "Where", Format.TEXT, row -> place(row.finding().cell()))
            .means("Sheet, row and column in the file."),
        Column.<FindingRecord>of("found", "Found", Format.TEXT, row -> row.finding().found())
            .means("The text that was found."),
        Column.<FindingRecord>of(
                "expected", "Expected or assumed", Format.TEXT, row -> row.finding().expected())
            .means("What was expected there, or assumed."),
        Column.<FindingRecord>of("remedy", "What to do", Format.TEXT, row -> row.finding().remedy())
            .means("What to do about it."));
  }

  private static String place(Cell cell) {
    return cell == null ? null : cell.place();
  }
}
