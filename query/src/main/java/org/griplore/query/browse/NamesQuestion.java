package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.NameRecord;

/** Lists the names that sources use, which model each means, and how that was settled. */
public final class NamesQuestion implements Question<NameRecord> {
  private static final List<String> STANDINGS =
      Arrays.stream(NameRecord.Standing.values()).map(NamesQuestion::word).toList();

  @Override
  public String kind() {
    return "names";
  }

  @Override
  public String purpose() {
    return "How models' names are written, which model each name means, and how that was settled";
  }

  @Override
  public String example() {
    return "names --standing assumed";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.repeated("standing", "STANDING", "only names that were settled so")
            .oneOf(STANDINGS));
  }

  private static String word(NameRecord.Standing standing) {
    return standing.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public Answer<NameRecord> answer(QueryContext context, Choices choices) {
    List<String> standings = choices.all("standing");
    Exclusions excluded = new Exclusions();
    List<NameRecord> rows = new ArrayList<>();
    for (NameRecord name : context.archive().names()) {
      if (standings.isEmpty() || standings.contains(word(name.standing()))) {
        rows.add(name);
      } else {
        excluded.add("names settled otherwise");
      }
    }
    long open = rows.stream().filter(NameRecord::open).count();
    return Answer.to(new Inquiry(kind(), "Which model does each name mean?", choices.given()))
        .summary(
            (rows.size() == 1 ? "One name" : rows.size() + " names")
                + ", "
                + open
                + " of them undecided.")
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .caveats(
            open == 0
                ? List.of()
                : List.of("`griplore settle` lists the undecided with candidates."))
        .build();
  }

  @Override
  public List<Column<NameRecord>> columns() {
    return List.of(
        Column.of("name", "Name as written", Format.TEXT, NameRecord::name)
            .means("The name as written in a source."),
        Column.of("model", "Model", Format.MODEL, NameRecord::model)
            .means("The model it is taken for."),
        Column.<NameRecord>of("standing", "Standing", Format.TEXT, row -> word(row.standing()))
            .means("Whether it is settled, guessed or open."),
        Column.<NameRecord>of(
                "how", "How it was settled", Format.TEXT, row -> row.standing().words())
            .means("How it was settled."),
        Column.<NameRecord>of(
                "decidedAt",
                "Decided on",
                Format.DATE,
                row ->
                    row.decision() == null
                        ? null
                        : row.decision().decidedAt().toString().substring(0, 10))
            .means("The day of the decision, where one was made."));
  }
}
