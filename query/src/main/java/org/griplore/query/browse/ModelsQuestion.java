package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Names;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.archive.TestRecord;

/** Lists the models with their descent and how often they were tested. */
public final class ModelsQuestion implements Question<ModelsQuestion.ModelRow> {
  /**
   * One model. All but model, tests and aliases may be null.
   *
   * @param tests tests that the filters let count
   */
  public record ModelRow(
      String model,
      String maker,
      String line,
      String generation,
      String launched,
      String season,
      String segment,
      String follows,
      int tests,
      Integer firstYear,
      Integer lastYear,
      List<String> aliases) {}

  @Override
  public String kind() {
    return "models";
  }

  @Override
  public String purpose() {
    return "Which models the archive knows, and how often each was tested";
  }

  @Override
  public String example() {
    return "models --line \"Velmora Aurelis\"";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.repeated("line", "LINE", "only the models of this line"));
    options.addAll(Filter.OPTIONS);
    return options;
  }

  @Override
  public Answer<ModelRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Filter filter = new Filter(choices, evidence).everyReport();
    TreeSet<Integer> wanted = new TreeSet<>();
    choices.all("line").forEach(name -> wanted.addAll(context.names().lineOrModel("line", name)));
    Map<Integer, String> names =
        evidence.models().stream().collect(Collectors.toMap(ModelRecord::id, ModelRecord::name));
    Exclusions excluded = new Exclusions();
    List<ModelRow> rows = new ArrayList<>();
    for (int model = 0; model < evidence.models().size(); model++) {
      if (!wanted.isEmpty() && !wanted.contains(model)) {
        continue;
      }
      ModelRow row = row(evidence, model, filter, names);
      if (!evidence.isTyre(model)) {
        excluded.add("names of reference sets");
      } else if (row.tests() == 0 && !filter.isOpen()) {
        excluded.add("models without a test that counts");
      } else {
        rows.add(row);
      }
    }
    return Answer.to(
            new Inquiry(
                kind(),
                "Which models does the archive know" + filter.words() + "?",
                choices.given()))
        .summary(
            "%d models, %d of them tested."
                .formatted(rows.size(), rows.stream().filter(row -> row.tests() > 0).count()))
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .build();
  }

  private static ModelRow row(
      Evidence evidence, int model, Filter filter, Map<Integer, String> names) {
    ModelRecord record = evidence.models().get(model);
    TreeSet<Integer> tests = new TreeSet<>();
    for (int i = evidence.entriesOfModel().from(model);
        i < evidence.entriesOfModel().to(model);
        i++) {
      int entry = evidence.entriesOfModel().rows()[i];
      if (filter.reasonAgainst(entry).isEmpty()) {
        tests.add(evidence.entries().test()[entry]);
      }
    }
    List<Integer> years =
        tests.stream()
            .map(evidence.tests()::get)
            .map(TestRecord::details)
            .filter(details -> details.date() != null)
            .map(details -> details.date().year())
            .sorted()
            .toList();
    return new ModelRow(
        record.name(),
        record.maker(),
        Names.lineName(record),
        record.generation(),
        record.launched() == null ? null : record.launched().text(),
        record.season() == null ? null : record.season().key(),
        record.segment(),
        record.follows() == null ? null : names.get(record.follows()),
        tests.size(),
        years.isEmpty() ? null : years.get(0),
        years.isEmpty() ? null : years.get(years.size() - 1),
        record.aliases());
  }

  @Override
  public List<Column<ModelRow>> columns() {
    return List.of(
        Column.of("model", "Model", Format.MODEL, ModelRow::model),
        Column.<ModelRow>of("maker", "Maker", Format.TEXT, ModelRow::maker)
            .means("The maker.")
            .asDetail(),
        Column.of("line", "Line", Format.LINE, ModelRow::line),
        Column.of("generation", "Generation", Format.TEXT, ModelRow::generation)
            .means("The generation within the line."),
        Column.of("launched", "Launched", Format.DATE, ModelRow::launched)
            .means("When it was launched, as exactly as known."),
        Column.of("season", "Season", Format.TEXT, ModelRow::season)
            .means("Its season class: summer, winter or all-season."),
        Column.of("segment", "Segment", Format.TEXT, ModelRow::segment).means("Its segment."),
        Column.of("follows", "Follows", Format.MODEL, ModelRow::follows)
            .means("The model it follows."),
        Column.of("tests", "Tests", Format.COUNT, ModelRow::tests)
            .means("Tests that the filters let count.")
            .leadingTo(
                (row, asked) ->
                    row.tests() == 0
                        ? null
                        : Lead.to("tests").with("model", row.model()).under(Filter.given(asked))),
        Column.of("firstYear", "First", Format.YEAR, ModelRow::firstYear)
            .means("Year of its first dated test."),
        Column.of("lastYear", "Last", Format.YEAR, ModelRow::lastYear)
            .means("Year of its last dated test."),
        Column.<ModelRow>of("aliases", "Also written", Format.TEXTS, ModelRow::aliases)
            .means("Other spellings that mean it.")
            .asDetail());
  }
}
