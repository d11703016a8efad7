package org.griplore.query.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.Wording;
import org.griplore.query.directory.Directory;
import org.griplore.query.directory.DirectoryEntry;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.text.NoteFilter;
import org.griplore.store.text.NoteHit;
import org.griplore.store.text.NoteHits;
import org.griplore.store.text.NoteQuery;
import org.griplore.store.text.Snippet;

/** Finds models, lines, disciplines, pages, tests and notes by what one types, all in one list. */
public final class SearchQuestion implements Question<SearchQuestion.SearchRow> {
  private final Directory pages;

  /**
   * Something found.
   *
   * @param kind its kind in a word
   * @param name what it is called, or the note's words
   * @param about what sets it apart; empty when nothing does
   * @param question the question that tells of it
   * @param option the option that names it; null when the question needs none
   * @param value the option's value
   */
  public record SearchRow(
      DirectoryEntry.Kind kind,
      String name,
      String about,
      String question,
      String option,
      String value) {
    /** The question that tells of it, with the option that names it. */
    Lead lead() {
      return option == null ? Lead.to(question) : Lead.to(question).with(option, value);
    }
  }

  /** Finds these questions too. */
  public SearchQuestion(List<Question<?>> questions) {
    this.pages =
        new Directory(
            questions.stream()
                .map(
                    question ->
                        new DirectoryEntry(
                            DirectoryEntry.Kind.QUESTION,
                            question.kind(),
                            PageWords.of(question),
                            question.purpose(),
                            question.kind(),
                            null,
                            null))
                .toList());
  }

  @Override
  public String kind() {
    return "search";
  }

  @Override
  public String purpose() {
    return "Where something is: a model, line, discipline, test, size, ground, vehicle, publication, page"
        + " or note";
  }

  @Override
  public String example() {
    return "search velmroa 4";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.arguments("text", "TEXT", "the beginning of its words, spelt nearly right", true),
        Option.once("limit", "N", "show at most this many of each kind", "5"));
  }

  @Override
  public Answer<SearchRow> answer(QueryContext context, Choices choices) {
    String text = String.join(" ", choices.all("text"));
    int limit = choices.integer("limit", 1, 100).orElseThrow();
    List<Directory.Found> found = new ArrayList<>(context.directory().find(text, limit));
    found.addAll(pages.find(text, limit));
    found.sort(
        java.util.Comparator.comparingDouble(Directory.Found::fit)
            .reversed()
            .thenComparing(one -> one.entry().kind()));
    List<SearchRow> rows =
        found.stream()
            .map(Directory.Found::entry)
            .map(
                entry ->
                    new SearchRow(
                        entry.kind(),
                        entry.name(),
                        entry.about(),
                        entry.question(),
                        entry.option(),
                        entry.value()))
            .collect(Collectors.toCollection(ArrayList::new));
    notes(context, text, limit).forEach(hit -> rows.add(row(hit)));
    return Answer.to(new Inquiry(kind(), "Where is: " + text + "?", choices.given()))
        .summary(summary(rows))
        .columns(columns())
        .rows(rows)
        .build();
  }

  /** Notes with words that begin so; where there is none, with words that are nearly so. */
  private static List<NoteHit> notes(QueryContext context, String text, int limit) {
    if (text.isBlank()) {
      return List.of();
    }
    boolean open = Character.isLetter(text.codePointBefore(text.length()));
    NoteHits begun =
        open ? context.notes().search(new NoteQuery(text + "*", NoteFilter.NONE, limit, 0)) : null;
    return begun != null && begun.total() > 0
        ? begun.hits()
        : context.notes().search(new NoteQuery(text, NoteFilter.NONE, limit, 0)).hits();
  }

  private static SearchRow row(NoteHit hit) {
    String words =
        hit.snippet().pieces().stream().map(Snippet.Piece::text).collect(Collectors.joining());
    String about =
        (hit.model() == null ? "" : hit.model() + ", ")
            + (hit.date() == null ? hit.test() : hit.date().text());
    return new SearchRow(
        DirectoryEntry.Kind.NOTE,
        words.replaceAll("\\s+", " ").strip(),
        about,
        "test",
        "test",
        hit.test());
  }

  private static String summary(List<SearchRow> rows) {
    if (rows.isEmpty()) {
      return "Nothing in the archive is called so, and no note says so.";
    }
    Map<DirectoryEntry.Kind, Integer> counts = new EnumMap<>(DirectoryEntry.Kind.class);
    rows.forEach(row -> counts.merge(row.kind(), 1, Integer::sum));
    String told =
        counts.entrySet().stream()
            .map(count -> Wording.counted(count.getValue(), count.getKey().word()))
            .collect(Collectors.joining(", "));
    return told + ", the nearest first.";
  }

  @Override
  public List<Column<SearchRow>> columns() {
    return List.of(
        Column.<SearchRow>of("kind", "What", Format.TEXT, row -> row.kind().word())
            .means("What it is: model, line, test, discipline, note and so on."),
        Column.of("name", "Name", Format.TEXT, SearchRow::name)
            .means("Its name.")
            .leadingTo((row, asked) -> row.lead()),
        Column.<SearchRow>of(
                "about", "About", Format.TEXT, row -> row.about().isEmpty() ? null : row.about())
            .means("What else tells it from others."),
        Column.<SearchRow>of("question", "Question", Format.TEXT, SearchRow::question)
            .means("The question that shows it.")
            .asDetail(),
        Column.<SearchRow>of("option", "Option", Format.TEXT, SearchRow::option)
            .means("That question's option.")
            .asDetail(),
        Column.<SearchRow>of("value", "Value", Format.TEXT, SearchRow::value)
            .means("The option's value.")
            .asDetail());
  }
}
