package org.griplore.query.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.text.NoteCounts;
import org.griplore.store.text.NoteQuery;

/** Counts the notes that match, by model, discipline and year. */
public final class TallyQuestion implements Question<TallyQuestion.TallyRow> {
  /**
   * How many notes share something.
   *
   * @param by what they share: {@code model}, {@code discipline} or {@code year}
   * @param value the model's name, the catalogue key or the year
   * @param notes how many there are
   */
  public record TallyRow(String by, String value, int notes) {}

  @Override
  public String kind() {
    return "tally";
  }

  @Override
  public String purpose() {
    return "How many past notes match words, by model, discipline and year";
  }

  @Override
  public String example() {
    return "tally aquaplaning --from 2018";
  }

  @Override
  public List<Option> options() {
    return NoteChoices.OPTIONS;
  }

  @Override
  public Answer<TallyRow> answer(QueryContext context, Choices choices) {
    String text = NoteChoices.text(choices);
    NoteCounts counts =
        context.notes().counts(new NoteQuery(text, NoteChoices.filter(context, choices), 1, 0));
    List<TallyRow> rows = new ArrayList<>();
    rows.addAll(most("model", counts.models()));
    rows.addAll(most("discipline", counts.disciplines()));
    counts.years().forEach((year, notes) -> rows.add(new TallyRow("year", year + "", notes)));
    return Answer.to(new Inquiry(kind(), "How are notes spread on: " + text + "?", choices.given()))
        .summary(counts.total() == 1 ? "One note matches." : counts.total() + " notes match.")
        .columns(columns())
        .rows(rows)
        .caveats(List.of("A note that names no model, discipline or year is in the total only."))
        .build();
  }

  private static List<TallyRow> most(String by, Map<String, Integer> counts) {
    return counts.entrySet().stream()
        .map(entry -> new TallyRow(by, entry.getKey(), entry.getValue()))
        .sorted(Comparator.comparingInt(TallyRow::notes).reversed().thenComparing(TallyRow::value))
        .toList();
  }

  @Override
  public List<Column<TallyRow>> columns() {
    return List.of(
        Column.of("by", "By", Format.TEXT, TallyRow::by)
            .means("What the notes share: model, discipline or year."),
        Column.of("value", "Shared", Format.TEXT, TallyRow::value)
            .means("The model's name, the discipline's key or the year."),
        Column.of("notes", "Notes", Format.COUNT, TallyRow::notes)
            .means("How many notes there are."));
  }
}
