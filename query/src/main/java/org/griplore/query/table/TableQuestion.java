package org.griplore.query.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Footnote;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.browse.TestFigure;
import org.griplore.query.discipline.Network;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Likeness;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.option.Weights;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** The comparison table for a new test. */
public final class TableQuestion implements Question<TableRow> {
  private static final Column<TableRow> MODEL =
      Column.of("model", "Model", Format.MODEL, TableRow::model);
  private static final Column<TableRow> ROLE =
      Column.of("role", "Role", Format.TEXT, TableRow::role)
          .means("Why the tyre is in the table: asked for, predecessor, successor or rival.")
          .asDetail();
  private static final Column<TableRow> FOOTNOTES =
      Column.of("footnotes", "Notes", Format.TEXTS, TableRow::footnotes)
          .means("Numbers of the footnotes on the tyre.");

  /** Which test's level the values of each discipline stand on. */
  public static final WholeFigure<Map<String, String>> LEVELS =
      new WholeFigure<>("levels", "The test on whose level each discipline's values stand.");

  /** What counts as a like test. */
  public static final WholeFigure<Map<String, Object>> LIKE =
      new WholeFigure<>("like", "The bounds of a like test, and the like tests.");

  @Override
  public String kind() {
    return "table";
  }

  @Override
  public String purpose() {
    return "The comparison table for a new test: what was measured in like tests, what is expected";
  }

  @Override
  public String example() {
    return "table --models \"Velmora Aurelis 5\" \"Kirazumi Hayari S-300\" --with predecessors"
        + " --size \"205/55 R16\" --mass 1400";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.required("models", "MODEL", "the tyres of the table"));
    options.add(
        Option.repeated("with", "WHOM", "also their predecessors, successors, or usual rivals")
            .oneOf(List.of(TableField.PREDECESSORS, TableField.SUCCESSORS, TableField.RIVALS)));
    options.add(
        Option.once(
            "size", "SIZE", "the size of the new test: like tests count as measured", null));
    options.add(
        Option.once("mass", "KG", "mass of the car: tests on like cars count as measured", null));
    options.add(
        Option.once(
            "reference", "MODEL", "what differences are to: a model, or best, or mean", "best"));
    options.add(
        Option.repeated("discipline", "DISCIPLINE", "the columns; all with evidence if none"));
    options.add(
        Option.repeated(
            "weights", "D=W,...", "your weights for a total, like wet-braking=3,wear=1"));
    Filter.OPTIONS.stream()
        .filter(option -> !Set.of("size", "rim").contains(option.name()))
        .forEach(options::add);
    return options;
  }

  @Override
  public Answer<TableRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Filter filter = new Filter(choices.without("size"), evidence);
    Likeness likeness = Likeness.of(choices);
    Reference reference = Reference.of(choices, context.names());
    List<String> comparable = comparable(context.catalogue());
    Map<String, Double> weights = Weights.of(choices, "weights", comparable);
    Map<Integer, String> field =
        TableField.of(choices, evidence, context.names(), filter, reference);
    List<Integer> models = List.copyOf(field.keySet());
    Exclusions excluded = new Exclusions();
    Map<String, DisciplineColumn> columns = new LinkedHashMap<>();
    for (String discipline : disciplines(choices, context.catalogue(), weights.keySet())) {
      Optional<Network> network =
          context.networks().of(evidence, discipline, filter, VarianceMethod.REML);
      DisciplineColumn column =
          network.isEmpty()
              ? null
              : new DisciplineColumn(
                  evidence, discipline, network.get(), likeness, models, reference);
      if (column != null && column.hasEvidence()) {
        columns.put(discipline, column);
      } else {
        excluded.add("disciplines in which no test tells of these tyres");
      }
    }
    TableAnswer told = new TableAnswer(evidence, likeness, field, columns, weights, context);
    return Answer.to(
            new Inquiry(
                kind(),
                "How do these tyres compare" + likeness.words() + filter.words() + "?",
                choices.given()))
        .summary(told.summary())
        .columns(columns(evidence, columns, !weights.isEmpty(), told.footnotes()))
        .rows(columns.isEmpty() ? List.of() : told.rows())
        .excluded(told.excluded(excluded))
        .caveats(told.caveats(reference))
        .sources(told.citations().list())
        .whole(LEVELS, told.levels())
        .whole(LIKE, told.like())
        .footnotes(told.footnotes())
        .build();
  }

  /** Disciplines that results can be compared in: not the reports' own totals. */
  private static List<String> comparable(DisciplineCatalogue catalogue) {
    return catalogue.all().stream()
        .map(Discipline::key)
        .filter(key -> !key.equals("overall"))
        .toList();
  }

  private static List<String> disciplines(
      Choices choices, DisciplineCatalogue catalogue, Set<String> weighted) {
    Set<String> wanted = CommonOptions.comparableAll(choices, catalogue);
    if (wanted.isEmpty()) {
      return comparable(catalogue);
    }
    wanted.addAll(weighted);
    return List.copyOf(wanted);
  }

  @Override
  public List<Column<TableRow>> columns() {
    List<Column<TableRow>> columns = new ArrayList<>();
    columns.add(MODEL);
    columns.add(ROLE);
    columns.add(figure(DISCIPLINE, "Discipline", null, null));
    columns.addAll(totals());
    columns.add(FOOTNOTES);
    return columns;
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(LEVELS, LIKE);
  }

  private static Column<TableRow> figure(
      String discipline, String name, String unit, String deltaUnit) {
    int decimals = TestFigure.decimals(unit);
    return Column.<TableRow, ComparedFigure>figure(
            discipline,
            name,
            decimals,
            ComparedFigure.parts(decimals, deltaUnit),
            row -> row.figures().get(discipline))
        .in(unit)
        .means("Value, place and difference in this discipline, measured or expected.");
  }

  private static List<Column<TableRow>> columns(
      Evidence evidence,
      Map<String, DisciplineColumn> disciplines,
      boolean weighted,
      List<Footnote> notes) {
    List<Column<TableRow>> columns = new ArrayList<>();
    columns.add(MODEL);
    columns.add(ROLE);
    disciplines.forEach(
        (key, column) ->
            columns.add(
                figure(
                    key,
                    evidence.catalogue().get(key).name(),
                    column.unit(),
                    column.network().measure().shownUnit())));
    if (weighted) {
      columns.addAll(totals());
    }
    if (notes.stream().anyMatch(note -> note.model() != null && note.discipline() == null)) {
      columns.add(FOOTNOTES);
    }
    return columns;
  }

  private static List<Column<TableRow>> totals() {
    return List.of(
        Column.<TableRow>number(
                "total", "Weighted total", Format.DELTA, 2, row -> row.total().value())
            .means("The total under your weights, plus is better."),
        Column.<TableRow>number("totalLow", "from", Format.DELTA, 2, row -> row.total().low())
            .means("Lower end of its 95 % interval."),
        Column.<TableRow>number("totalHigh", "to", Format.DELTA, 2, row -> row.total().high())
            .means("Upper end of its 95 % interval."),
        Column.<TableRow>of("totalPlace", "Place", Format.PLACE, row -> row.total().place())
            .better(Direction.LOW)
            .means("Place by that total."),
        Column.<TableRow>of(
                "totalLeftOut", "Left out of it", Format.TEXTS, row -> row.total().leftOut())
            .means("Weighted disciplines in which the tyre has no figure."));
  }
}
