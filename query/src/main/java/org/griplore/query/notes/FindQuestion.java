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
                        hit.revision(),
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
        Column.<NoteHit>of("note", "Note", Format.COUNT, NoteHit::noteId).asDetail(),
        Column.of("test", "Test", Format.TEST, NoteHit::test),
        Column.of(
            "date", "Date", Format.DATE, hit -> hit.date() == null ? null : hit.date().text()),
        Column.of("model", "Model", Format.MODEL, NoteHit::model),
        Column.of("discipline", "Discipline", Format.DISCIPLINE, NoteHit::discipline),
        Column.of("snippet", "Note", Format.SNIPPET, NoteHit::snippet),
        Column.<NoteHit>of("text", "Whole note", Format.TEXT, hit -> hit.cell().found()).asDetail(),
        Column.<NoteHit>of("file", "File", Format.TEXT, NoteHit::file).asDetail(),
        Column.<NoteHit>of("where", "Where", Format.TEXT, hit -> hit.cell().place()).asDetail(),
        Column.<NoteHit>number("score", "Score", Format.NUMBER, 2, hit -> (double) hit.score())
            .asDetail());
  }
}
