package org.griplore.query.profile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ModelRecord;

/** How the generations of a line stand beside each other, discipline by discipline. */
public final class LineQuestion implements Question<ProfileRow> {
  /** What is known of each generation. */
  public static final WholeFigure<List<ModelQuestion.Known>> KNOWN =
      new WholeFigure<>("known", "What is known of each generation besides its results.");

  @Override
  public String kind() {
    return "line";
  }

  @Override
  public String purpose() {
    return "How the generations of a line stand, discipline by discipline";
  }

  @Override
  public String example() {
    return "line \"Velmora Aurelis\"";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.arguments("line", "LINE", "a line, maker first", true));
    options.add(CommonOptions.discipline(null));
    options.addAll(Filter.OPTIONS);
    options.add(CompareOptions.VARIANCE);
    return options;
  }

  @Override
  public List<Column<ProfileRow>> columns() {
    return ProfileColumns.of(true);
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(KNOWN);
  }

  @Override
  public Answer<ProfileRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    List<ModelRecord> records = evidence.models();
    Set<Integer> named = new LinkedHashSet<>();
    choices.all("line").forEach(name -> named.addAll(context.names().lineOrModel("line", name)));
    List<Integer> models = new Forebears(records).inOrder(List.copyOf(named), records);
    Filter filter = new Filter(choices, evidence);
    List<String> disciplines =
        choices.has("discipline")
            ? List.of(CommonOptions.discipline(choices, context.catalogue()))
            : Profiler.disciplines(context, evidence);
    Profiler profiler = new Profiler(context, evidence, filter, CompareOptions.variance(choices));
    List<ProfileRow> rows = new ArrayList<>();
    for (String discipline : disciplines) {
      rows.addAll(profiler.rows(discipline, models));
    }
    String names = String.join(", ", choices.all("line"));
    return Answer.to(
            new Inquiry(
                kind(),
                "How do the generations of " + names + " stand" + filter.words() + "?",
                choices.given()))
        .summary(summary(names, records, models, rows))
        .columns(ProfileColumns.of(true))
        .rows(rows)
        .excluded(profiler.excluded().list())
        .caveats(ModelQuestion.caveats(profiler, rows))
        .sources(profiler.citations().list())
        .whole(KNOWN, models.stream().map(i -> ModelQuestion.known(evidence, i)).toList())
        .build();
  }

  private static String summary(
      String names, List<ModelRecord> records, List<Integer> models, List<ProfileRow> rows) {
    String many = Wording.counted(models.size(), "model");
    if (rows.isEmpty()) {
      return names + " has " + many + " and no test that counts.";
    }
    String newest = records.get(models.get(models.size() - 1)).name();
    List<ProfileRow> of =
        rows.stream().filter(row -> row.model().equals(newest) && row.effect() != null).toList();
    long better = of.stream().filter(row -> row.side() > 0).count();
    long worse = of.stream().filter(row -> row.side() < 0).count();
    if (of.size() == 1) {
      return "%s has %s. The newest, %s, against the mean in %s: %s."
          .formatted(names, many, newest, of.get(0).discipline(), of.get(0).told());
    }
    return "%s has %s. The newest, %s, is better than the mean in %d, worse in %d and not to be told apart in %d of %d disciplines."
        .formatted(names, many, newest, better, worse, of.size() - better - worse, of.size());
  }
}
