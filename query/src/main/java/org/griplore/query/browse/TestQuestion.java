package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.TestKeys;
import org.griplore.query.label.Labels;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Details;

/** Shows one test in full: every tyre, every discipline, every figure with its number. */
public final class TestQuestion implements Question<TestQuestion.TyreRow> {
  private static final Column<TyreRow> MODEL =
      Column.of("model", "Model", Format.MODEL, TyreRow::model);
  private static final Column<TyreRow> SIZE =
      Column.of("size", "Size", Format.TEXT, TyreRow::size).means("The size of this tyre.");
  private static final Column<TyreRow> RESULTS =
      Column.rows("results", "Results", TestFigure.COLUMNS, TestQuestion::figures)
          .means("Its figures with spread, runs and basis.");

  /** One tyre of the test, its figures by catalogue key. */
  public record TyreRow(String model, String size, Map<String, TestFigure> figures) {}

  @Override
  public String kind() {
    return "test";
  }

  @Override
  public String purpose() {
    return "One test in full, with places and differences to the best or to a reference";
  }

  @Override
  public String example() {
    return "test own-2021-1 --reference \"Velmora Aurelis 4\"";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.arguments("test", "KEY", "the test's key, as `tests` lists it", true),
        Option.once(
            "reference", "MODEL", "show differences to this model instead of to the best", null));
  }

  @Override
  public Answer<TyreRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    if (choices.all("test").size() > 1) {
      throw Choices.refusal("test", String.join(", ", choices.all("test")), "one test");
    }
    int test = TestKeys.position(evidence, choices.text("test"));
    Integer reference =
        choices.has("reference")
            ? (Integer) context.names().model("reference", choices.text("reference"))
            : null;
    Exclusions excluded = new Exclusions();
    Citations citations = new Citations(evidence);
    TestTable table = new TestTable(evidence, test, reference, excluded, citations);
    List<TyreRow> rows = table.rows();
    TestRecord record = evidence.tests().get(test);
    List<String> caveats = new ArrayList<>();
    if (reference != null && !table.hasReference()) {
      caveats.add(
          evidence.models().get(reference).name() + " was not in this test: no differences shown.");
    }
    if (rows.stream()
        .flatMap(row -> row.figures().values().stream())
        .anyMatch(figure -> "%".equals(figure.deltaUnit()))) {
      caveats.add(CompareOptions.PER_CENT);
    }
    caveats.add(CommonOptions.RESULTS_HOLD);
    Details details = record.details();
    return Answer.to(
            new Inquiry(kind(), "What came out of test " + record.key() + "?", choices.given()))
        .summary(summary(record, rows, table.disciplines()))
        .columns(columns(evidence, table.disciplines(), table.unitOf()))
        .rows(rows)
        .excluded(excluded.list())
        .caveats(caveats)
        .sources(citations.list())
        .whole(TestFacts.DATE, details.date() == null ? null : details.date().text())
        .whole(TestFacts.TITLE, details.title())
        .whole(TestFacts.PUBLICATION, details.publication())
        .whole(TestFacts.KIND, details.kind() == null ? null : details.kind().key())
        .whole(TestFacts.SIZE, details.size())
        .whole(TestFacts.SEASON, details.season() == null ? null : details.season().key())
        .whole(TestFacts.VEHICLE, details.vehicle())
        .whole(TestFacts.VEHICLE_MASS, details.vehicleMassKg())
        .whole(TestFacts.VENUE, details.venue())
        .whole(TestFacts.SURFACE, details.surfaceC())
        .whole(TestFacts.AIR, details.airC())
        .whole(TestFacts.LABELS, Labels.ofTest(context, test))
        .build();
  }

  private static String summary(TestRecord test, List<TyreRow> rows, List<String> disciplines) {
    Details details = test.details();
    String what = Optional.ofNullable(details.title()).orElse(test.key());
    String when = details.date() == null ? "" : ", " + details.date();
    String size = details.size() == null ? "" : ", " + details.size();
    String best =
        rows.stream()
            .filter(row -> row.figures().containsKey("overall"))
            .filter(row -> Integer.valueOf(1).equals(row.figures().get("overall").place()))
            .map(TyreRow::model)
            .findFirst()
            .map(model -> "; first overall: " + model)
            .orElse("");
    return "%s%s%s: %d tyres in %d disciplines%s."
        .formatted(what, when, size, rows.size(), disciplines.size(), best);
  }

  private static List<Column<TyreRow>> columns(
      Evidence evidence, List<String> disciplines, Map<String, String> unitOf) {
    List<Column<TyreRow>> columns = new ArrayList<>();
    columns.add(MODEL);
    columns.add(SIZE);
    for (String discipline : disciplines) {
      columns.add(
          figure(discipline, evidence.catalogue().get(discipline).name(), unitOf.get(discipline)));
    }
    columns.add(RESULTS);
    return columns;
  }

  @Override
  public List<Column<TyreRow>> columns() {
    return List.of(MODEL, SIZE, figure(DISCIPLINE, "Discipline", null), RESULTS);
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return TestFacts.ALL;
  }

  private static Column<TyreRow> figure(String discipline, String name, String unit) {
    return Column.<TyreRow, TestFigure>figure(
            discipline,
            name,
            TestFigure.decimals(unit),
            TestFigure.parts(TestFigure.decimals(unit)),
            row -> row.figures().get(discipline))
        .in(unit)
        .means("Value, place and difference in this discipline.");
  }

  private static List<TestFigure> figures(TyreRow row) {
    return new ArrayList<>(new LinkedHashMap<>(row.figures()).values());
  }
}
