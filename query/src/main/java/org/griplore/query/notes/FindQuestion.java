package org.griplore.query.notes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.SourceReference;
import org.griplore.query.notes.NoteCount.By;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.text.NoteCounts;
import org.griplore.store.text.NoteHit;
import org.griplore.store.text.NoteHits;
import org.griplore.store.text.NoteQuery;
import org.griplore.store.vocabulary.Direction;

/** Finds notes by words, the best match first, or counts them by model, discipline and year. */
public final class FindQuestion implements Question<NoteRow> {
  private static final Option COUNT =
      Option.flag("count", "count the notes by model, discipline and year instead of showing them");

  private static final List<Column<NoteRow>> FOUND =
      List.of(
          Column.<NoteRow>of("note", "Note", Format.COUNT, row -> row.hit().noteId())
              .means("Number of the note in the archive.")
              .asDetail(),
          Column.<NoteRow>of("test", "Test", Format.TEST, row -> row.hit().test())
              .means("The test it is about."),
          Column.<NoteRow>of("date", "Date", Format.DATE, row -> date(row.hit()))
              .means("Date of the test or of the note, as exactly as known."),
          Column.<NoteRow>of("model", "Model", Format.MODEL, row -> row.hit().model())
              .means("The model it is about."),
          Column.<NoteRow>of(
                  "discipline", "Discipline", Format.DISCIPLINE, row -> row.hit().discipline())
              .means("The discipline it is about."),
          Column.<NoteRow>of("snippet", "Note", Format.SNIPPET, row -> row.hit().snippet())
              .means("The note around the words that matched."),
          Column.<NoteRow>of("text", "Whole note", Format.TEXT, row -> row.hit().cell().found())
              .means("The whole note as it stands in its source.")
              .asDetail(),
          Column.<NoteRow>of("file", "File", Format.TEXT, row -> row.hit().file())
              .means("The file it stands in.")
              .asDetail(),
          Column.<NoteRow>of("where", "Where", Format.TEXT, row -> row.hit().cell().place())
              .means("Sheet, row and column in the file.")
              .asDetail(),
          Column.<NoteRow>number(
                  "score", "Score", Format.NUMBER, 2, row -> (double) row.hit().score())
              .better(Direction.HIGH)
              .means(
                  "How well the note matches, higher is closer; comparable within one answer only.")
              .asDetail());

  private static final List<Column<NoteRow>> COUNTED =
      List.of(
          Column.<NoteRow>of("by", "By", Format.TEXT, row -> row.count().by().word())
              .means("What the notes share: model, discipline or year."),
          Column.<NoteRow>of("value", "Shared", Format.TEXT, row -> row.count().value())
              .means("The model's name, the discipline's key or the year."),
          Column.<NoteRow>of("notes", "Notes", Format.COUNT, row -> row.count().notes())
              .means("How many notes there are.")
              .leadingTo((row, asked) -> row.count().narrowed(asked).without("count")));

  @Override
  public String kind() {
    return "find";
  }

  @Override
  public String purpose() {
    return "What past notes say, found by words";
  }

  @Override
  public String example() {
    return "find \"steering feel\" wet --model \"Velmora Aurelis 4\"";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>(NoteChoices.OPTIONS);
    options.add(COUNT);
    options.add(Option.once("limit", "N", "show at most this many", "20"));
    options.add(Option.once("skip", "N", "leave out the first", "0"));
    return options;
  }

  @Override
  public Answer<NoteRow> answer(QueryContext context, Choices choices) {
    String text = NoteChoices.text(choices);
    if (choices.has("count")) {
      return counted(context, choices, text);
    }
    int limit = choices.integer("limit", 1, 1000).orElseThrow();
    int skip = choices.integer("skip", 0, NoteQuery.MOST - limit).orElseThrow();
    NoteHits hits =
        context
            .notes()
            .search(new NoteQuery(text, NoteChoices.filter(context, choices), limit, skip));
    List<Exclusion> further = new ArrayList<>();
    long beyond = hits.total() - skip - hits.hits().size();
    if (beyond > 0) {
      further.add(new Exclusion("further notes that match; see --limit and --skip", (int) beyond));
    }
    return Answer.to(new Inquiry(kind(), "What do notes say on: " + text + "?", choices.given()))
        .summary(summary(hits))
        .columns(FOUND)
        .rows(hits.hits().stream().map(NoteRow::of).toList())
        .excluded(further)
        .caveats(hits.how().sentences())
        .sources(sources(hits))
        .page(limit, skip, beyond > 0)
        .build();
  }

  private static String summary(NoteHits hits) {
    if (hits.total() == 0) {
      return "No note matches.";
    }
    String total = (hits.totalIsExact() ? "" : "More than ") + hits.total();
    return total + (hits.total() == 1 ? " note matches." : " notes match.");
  }

  private static List<SourceReference> sources(NoteHits hits) {
    return new ArrayList<>(
        hits.hits().stream()
            .map(
                hit ->
                    new SourceReference(
                        hit.report(),
                        hit.title() == null ? hit.test() : hit.title(),
                        hit.source() == null ? null : hit.source().key(),
                        date(hit),
                        hit.test(),
                        hit.file()))
            .collect(Collectors.toCollection(LinkedHashSet::new)));
  }

  private static String date(NoteHit hit) {
    return hit.date() == null ? null : hit.date().text();
  }

  /** How the notes that match are spread; every option but the page's narrows them. */
  private Answer<NoteRow> counted(QueryContext context, Choices choices, String text) {
    NoteCounts counts =
        context.notes().counts(new NoteQuery(text, NoteChoices.filter(context, choices), 1, 0));
    List<NoteCount> rows = new ArrayList<>();
    rows.addAll(NoteCount.most(By.MODEL, counts.models()));
    rows.addAll(NoteCount.most(By.DISCIPLINE, counts.disciplines()));
    counts.years().forEach((year, notes) -> rows.add(new NoteCount(By.YEAR, year + "", notes)));
    return Answer.to(new Inquiry(kind(), "How are notes spread on: " + text + "?", choices.given()))
        .summary(counts.total() == 1 ? "One note matches." : counts.total() + " notes match.")
        .columns(COUNTED)
        .rows(rows.stream().map(NoteRow::of).toList())
        .caveats(List.of("A note that names no model, discipline or year is in the total only."))
        .build();
  }

  @Override
  public List<Column<NoteRow>> columns() {
    return Stream.concat(FOUND.stream(), COUNTED.stream()).toList();
  }
}
