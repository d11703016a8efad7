package org.griplore.query.notes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.SourceReference;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.text.NoteHit;
import org.griplore.store.text.NoteHits;
import org.griplore.store.text.NoteQuery;
import org.griplore.store.vocabulary.Direction;

/** Finds notes by words, the best match first. */
public final class FindQuestion implements Question<NoteHit> {
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
    options.add(Option.once("limit", "N", "show at most this many", "20"));
    options.add(Option.once("skip", "N", "leave out the first", "0"));
    return options;
  }

  @Override
  public Answer<NoteHit> answer(QueryContext context, Choices choices) {
    String text = NoteChoices.text(choices);
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
        .columns(columns())
        .rows(hits.hits())
        .excluded(further)
        .caveats(hits.how().sentences())
        .sources(sources(hits))
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
                        hit.date() == null ? null : hit.date().text(),
                        hit.test(),
                        hit.file()))
            .collect(Collectors.toCollection(LinkedHashSet::new)));
  }

  @Override
  public List<Column<NoteHit>> columns() {
    return List.of(
        Column.<NoteHit>of("note", "Note", Format.COUNT, NoteHit::noteId)
            .means("Number of the note in the archive.")
            .asDetail(),
        Column.of("test", "Test", Format.TEST, NoteHit::test).means("The test it is about."),
        Column.<NoteHit>of(
                "date", "Date", Format.DATE, hit -> hit.date() == null ? null : hit.date().text())
            .means("Date of the test or of the note, as exactly as known."),
        Column.of("model", "Model", Format.MODEL, NoteHit::model).means("The model it is about."),
        Column.of("discipline", "Discipline", Format.DISCIPLINE, NoteHit::discipline)
            .means("The discipline it is about."),
        Column.of("snippet", "Note", Format.SNIPPET, NoteHit::snippet)
            .means("The note around the words that matched."),
        Column.<NoteHit>of("text", "Whole note", Format.TEXT, hit -> hit.cell().found())
            .means("The whole note as it stands in its source.")
            .asDetail(),
        Column.<NoteHit>of("file", "File", Format.TEXT, NoteHit::file)
            .means("The file it stands in.")
            .asDetail(),
        Column.<NoteHit>of("where", "Where", Format.TEXT, hit -> hit.cell().place())
            .means("Sheet, row and column in the file.")
            .asDetail(),
        Column.<NoteHit>number("score", "Score", Format.NUMBER, 2, hit -> (double) hit.score())
            .better(Direction.HIGH)
            .means(
                "How well the note matches, higher is closer; comparable within one answer only.")
            .asDetail());
  }
}
