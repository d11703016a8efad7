package org.griplore.query.browse;

import java.util.List;
import java.util.function.Function;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.names.Candidate;
import org.griplore.store.names.OpenName;
import org.griplore.store.names.OpenNames;
import org.griplore.store.vocabulary.Direction;

/** Lists the names that nobody has decided on, with the models they could mean. */
public final class SettleQuestion implements Question<OpenName> {
  private static final List<Column<Candidate>> CANDIDATES =
      List.of(
          Column.of("model", "Model", Format.MODEL, Candidate::model),
          Column.number("score", "Likeness", Format.NUMBER, 2, Candidate::score)
              .better(Direction.HIGH)
              .means("How like the names are, from 0 to 1."),
          Column.of("reason", "Why", Format.TEXT, Candidate::reason).means("Why they are like."));

  @Override
  public String kind() {
    return "settle";
  }

  @Override
  public String purpose() {
    return "Names that nobody has decided on, with the models they could mean";
  }

  @Override
  public String example() {
    return "settle";
  }

  @Override
  public List<Option> options() {
    return List.of();
  }

  @Override
  public Answer<OpenName> answer(QueryContext context, Choices choices) {
    List<OpenName> names = OpenNames.of(context.archive());
    long like = names.stream().filter(name -> !name.candidates().isEmpty()).count();
    return Answer.to(new Inquiry(kind(), "Which names are undecided?", choices.given()))
        .summary(summary(names.size(), like))
        .columns(columns())
        .rows(names)
        .caveats(
            names.isEmpty()
                ? List.of()
                : List.of(
                    "Until it is decided, a name stands as a model of its own or as the model it is"
                        + " taken for."))
        .build();
  }

  private static String summary(int names, long like) {
    if (names == 0) {
      return "No name is undecided.";
    }
    return (names == 1 ? "One name is undecided; " : names + " names are undecided; ")
        + (like == 0
            ? "none is like a model that the archive knows."
            : like == 1 ? "one is like a model." : like + " are like a model.");
  }

  @Override
  public List<Column<OpenName>> columns() {
    return List.of(
        Column.of("name", "Name", Format.TEXT, OpenName::name)
            .means("The name as written in a source."),
        Column.of("takenAs", "Taken as", Format.MODEL, OpenName::takenAs)
            .means("The model it stands for until it is decided."),
        best("nearest", "Nearest model", Format.MODEL, 0, Candidate::model)
            .means("The model it is most like."),
        best("score", "Likeness", Format.NUMBER, 2, Candidate::score)
            .better(Direction.HIGH)
            .means("How like the names are, from 0 to 1."),
        best("reason", "Why", Format.TEXT, 0, Candidate::reason).means("Why they are like."),
        Column.<OpenName>of("tests", "Tests", Format.COUNT, name -> name.use().tests())
            .means("Tests that use the name."),
        Column.<OpenName>of("file", "First met in", Format.TEXT, name -> name.use().file())
            .means("The file it was first met in."),
        Column.<OpenName>of(
                "where",
                "Where",
                Format.TEXT,
                name -> name.use().cell() == null ? null : name.use().cell().place())
            .means("Sheet, row and column in that file.")
            .asDetail(),
        Column.rows("candidates", "Candidates", CANDIDATES, OpenName::candidates)
            .means("The models it could mean, the likeliest first."));
  }

  private static Column<OpenName> best(
      String key, String title, Format format, int decimals, Function<Candidate, Object> of) {
    return Column.number(
        key,
        title,
        format,
        decimals,
        name -> name.candidates().isEmpty() ? null : of.apply(name.candidates().get(0)));
  }
}
