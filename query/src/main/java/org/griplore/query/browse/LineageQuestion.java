package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.LineageSaid;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.LineageRow;

/** What holds of one model's descent, who says so, and who says otherwise. */
public final class LineageQuestion implements Question<LineageQuestion.Fact> {
  /** The model's full name. */
  public static final WholeFigure<String> MODEL =
      new WholeFigure<>("model", "The model's full name.");

  private static final List<Topic> TOPICS =
      List.of(
          Topic.FOLLOWS,
          Topic.MAKER,
          Topic.LINE,
          Topic.GENERATION,
          Topic.LAUNCHED,
          Topic.SEASON,
          Topic.SEGMENT);

  /**
   * One thing that is known of a model's descent.
   *
   * @param topic what it is
   * @param value what holds; null when nothing is known, or there is none
   * @param basis who says so; null when nobody says anything
   * @param otherwise who says something else, and what
   */
  public record Fact(Topic topic, String value, String basis, List<String> otherwise) {
    /** Whether the user decided it. */
    public boolean isDecided() {
      return basis != null && basis.startsWith("decided");
    }
  }

  @Override
  public String kind() {
    return "lineage";
  }

  @Override
  public String purpose() {
    return "What holds of a model's descent, who says so, and who says otherwise";
  }

  @Override
  public String example() {
    return "lineage \"Velmora Aurelis 5\"";
  }

  @Override
  public List<Option> options() {
    return List.of(Option.arguments("model", "MODEL", "the model", true));
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(MODEL);
  }

  @Override
  public Answer<Fact> answer(QueryContext context, Choices choices) {
    List<ModelRecord> models = context.evidence().models();
    List<Integer> named = context.names().models("model", choices.all("model"));
    if (named.size() != 1) {
      throw Choices.refusal("model", String.join(", ", choices.all("model")), "one model");
    }
    ModelRecord model = models.get(named.get(0));
    List<LineageSaid> said = context.archive().lineageOf(model.id());
    List<Decision> decisions =
        context.archive().decisions().stream()
            .filter(decision -> means(context, decision, named.get(0)))
            .toList();
    List<Fact> facts =
        TOPICS.stream().map(topic -> fact(topic, model, models, said, decisions)).toList();
    long known = facts.stream().filter(fact -> fact.value() != null).count();
    return Answer.to(
            new Inquiry(
                kind(), "What is known of the descent of " + model.name() + "?", choices.given()))
        .summary(model.name() + ": " + known + " of " + facts.size() + " things are known.")
        .columns(columns())
        .rows(facts)
        .whole(MODEL, model.name())
        .build();
  }

  private static boolean means(QueryContext context, Decision decision, int model) {
    try {
      return context.names().model("model", decision.name()) == model;
    } catch (org.griplore.store.vocabulary.Refusal unknown) {
      return false;
    }
  }

  private static Fact fact(
      Topic topic,
      ModelRecord model,
      List<ModelRecord> models,
      List<LineageSaid> said,
      List<Decision> decisions) {
    String value = value(topic, model, models);
    Optional<Decision> decided =
        decisions.stream().filter(decision -> decision.topic() == topic).findFirst();
    List<String> otherwise = new ArrayList<>();
    String agrees = null;
    for (LineageSaid saying : said) {
      String told = told(topic, saying.row());
      if (told != null && Objects.equals(told, value)) {
        agrees = place(saying);
      } else if (told != null) {
        otherwise.add(place(saying) + ": " + told);
      }
    }
    String basis =
        decided
            .map(
                decision ->
                    "decided on "
                        + decision.decidedAt().toString().substring(0, 10)
                        + (decision.value() == null ? ": there is none" : "")
                        + (decision.words().isEmpty() ? "" : " (" + decision.words() + ")"))
            .orElse(agrees);
    return new Fact(topic, value, basis, otherwise);
  }

  private static String place(LineageSaid saying) {
    return saying.file() + (saying.row().cell() == null ? "" : ", " + saying.row().cell().place());
  }

  private static String value(Topic topic, ModelRecord model, List<ModelRecord> models) {
    return switch (topic) {
      case MEANING -> null;
      case MAKER -> model.maker();
      case LINE -> model.line();
      case GENERATION -> model.generation();
      case LAUNCHED -> model.launched() == null ? null : model.launched().text();
      case SEASON -> model.season() == null ? null : model.season().key();
      case SEGMENT -> model.segment();
      case FOLLOWS ->
          models.stream()
              .filter(other -> model.follows() != null && other.id() == model.follows())
              .map(ModelRecord::name)
              .findFirst()
              .orElse(null);
    };
  }

  private static String told(Topic topic, LineageRow row) {
    return switch (topic) {
      case MEANING -> null;
      case MAKER -> row.maker();
      case LINE -> row.line();
      case GENERATION -> row.generation();
      case LAUNCHED -> row.launched() == null ? null : row.launched().text();
      case SEASON -> row.season() == null ? null : row.season().key();
      case SEGMENT -> row.segment();
      case FOLLOWS -> row.follows();
    };
  }

  @Override
  public List<Column<Fact>> columns() {
    return List.of(
        Column.<Fact>of("topic", "What", Format.TEXT, fact -> fact.topic().word())
            .means("What it is: maker, line, generation and so on."),
        Column.of("value", "Holds", Format.TEXT, Fact::value).means("What holds."),
        Column.of("basis", "Who says so", Format.TEXT, Fact::basis).means("Who says so."),
        Column.of("otherwise", "Who says otherwise", Format.TEXTS, Fact::otherwise)
            .means("Who says something else, and what."));
  }
}
