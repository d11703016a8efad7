package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.FigureFeed;
import org.griplore.store.archive.Revision;
import org.griplore.store.archive.StoredFigure;
import org.griplore.store.vocabulary.Cell;

/** What one revision of a file told, whether it still counts or a newer one replaced it. */
public final class RevisionQuestion implements Question<StoredFigure> {
  private static final int MOST = 100_000;

  @Override
  public String kind() {
    return "revision";
  }

  @Override
  public String purpose() {
    return "What one revision of a file told, be it replaced by a newer one or not";
  }

  @Override
  public String example() {
    return "revision 3";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.arguments("revision", "NUMBER", "the revision's number, as in `sources`", true),
        Option.once("limit", "N", "how many figures at the most", "1000"));
  }

  @Override
  public Answer<StoredFigure> answer(QueryContext context, Choices choices) {
    if (choices.all("revision").size() != 1) {
      throw Choices.refusal(
          "revision", String.join(", ", choices.all("revision")), "one revision's number");
    }
    int number = choices.integer("revision", 1, Integer.MAX_VALUE).orElseThrow();
    Revision revision =
        context.archive().revisions().stream()
            .filter(its -> its.id() == number)
            .findFirst()
            .orElseThrow(
                () ->
                    Choices.refusal(
                        "revision",
                        String.valueOf(number),
                        "a revision's number, as in `sources`"));
    int limit = choices.integer("limit", 1, MOST).orElseThrow();
    List<StoredFigure> rows = new ArrayList<>();
    int further = 0;
    try (FigureFeed figures = context.archive().figuresOf(number)) {
      for (StoredFigure figure = figures.next(); figure != null; figure = figures.next()) {
        if (rows.size() < limit) {
          rows.add(figure);
        } else {
          further++;
        }
      }
    }
    Exclusions excluded = new Exclusions();
    excluded.add("further figures", further);
    return Answer.to(
            new Inquiry(
                kind(),
                "What did revision %d of %s tell?".formatted(revision.number(), revision.name()),
                choices.given()))
        .summary(summary(revision, rows.size() + further))
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .caveats(context.archive().revisionChanges(number))
        .build();
  }

  private static String summary(Revision revision, int figures) {
    String added = revision.addedAt().toString().substring(0, 10);
    return "Revision %d of %s, added on %s: %d figures; %s."
        .formatted(
            revision.number(),
            revision.name(),
            added,
            figures,
            revision.supersededBy() == null ? "it counts" : "a newer revision replaced it");
  }

  @Override
  public List<Column<StoredFigure>> columns() {
    return List.of(
        Column.of("test", "Test", Format.TEXT, StoredFigure::test).means("The test's key."),
        Column.of("model", "Model", Format.TEXT, StoredFigure::model)
            .means("The model as written."),
        Column.of("size", "Size", Format.TEXT, StoredFigure::size).means("The size of this tyre."),
        Column.of(
            "discipline", "Discipline", Format.DISCIPLINE, figure -> figure.result().discipline()),
        Column.<StoredFigure>number(
                "value", "Value", Format.NUMBER, 2, figure -> figure.result().value())
            .inUnitOf("unit")
            .means("The value as the archive keeps it."),
        Column.<StoredFigure>of(
                "unit",
                "Unit",
                Format.TEXT,
                figure -> figure.result().unit() == null ? null : figure.result().unit().symbol())
            .means("Its unit."),
        Column.<StoredFigure>of("place", "Place", Format.PLACE, figure -> figure.result().place())
            .means("The place as published."),
        Column.<StoredFigure>of("found", "Text found", Format.TEXT, figure -> found(cell(figure)))
            .means("The text as found."),
        Column.<StoredFigure>of("where", "Where", Format.TEXT, figure -> place(cell(figure)))
            .means("Sheet, row and column in the file."));
  }

  private static Cell cell(StoredFigure figure) {
    Cell value = figure.result().cells().value();
    return value == null ? figure.result().cells().place() : value;
  }

  private static String found(Cell cell) {
    return cell == null ? null : cell.found();
  }

  private static String place(Cell cell) {
    return cell == null ? null : cell.place();
  }
}
