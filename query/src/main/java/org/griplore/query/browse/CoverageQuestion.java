package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.Lead;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.answer.Wording;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;

/** What was tested of each model and, more to the point, what never was. */
public final class CoverageQuestion implements Question<CoverageQuestion.CoverageRow> {
  /** Models before the further wishes of the question. */
  public static final WholeFigure<Integer> MODELS =
      new WholeFigure<>("models", "How many models the filters let through.");

  /**
   * One model.
   *
   * @param season season class; null when not known
   * @param tests tests that count
   * @param lastYear year of the last dated one; null when there is none
   * @param counts tests with a result, by discipline; disciplines without one are absent
   * @param gaps disciplines in which other models of its season class were tested, and it was not
   */
  public record CoverageRow(
      String model,
      String season,
      int tests,
      Integer lastYear,
      Map<String, Integer> counts,
      List<String> gaps) {}

  private static final List<String> ORDERS = List.of("name", "tests", "gaps", "last");

  @Override
  public String kind() {
    return "coverage";
  }

  @Override
  public String purpose() {
    return "What was tested of each model, and what never was";
  }

  @Override
  public String example() {
    return "coverage --season all-season --missing wear";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.repeated("line", "LINE", "only the models of this line"));
    options.add(
        Option.repeated(
            "missing", "DISCIPLINE", "only models without a test in this discipline that counts"));
    options.add(
        Option.once("sort", "ORDER", "by name, most tests, most gaps, or longest untested", "name")
            .oneOf(ORDERS));
    options.addAll(Filter.OPTIONS);
    options.add(Option.once("limit", "N", "show at most this many models", "100"));
    options.add(Option.once("skip", "N", "leave out the first", "0"));
    return options;
  }

  @Override
  public Answer<CoverageRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    Filter filter = new Filter(choices, evidence).everyReport();
    int limit = choices.integer("limit", 1, 100_000).orElseThrow();
    int skip = choices.integer("skip", 0, 1_000_000).orElseThrow();
    List<String> missing = choices.all("missing");
    missing.forEach(key -> CommonOptions.known("missing", key, context.catalogue()));
    TreeSet<Integer> lines = new TreeSet<>();
    choices.all("line").forEach(name -> lines.addAll(context.names().lineOrModel("line", name)));
    CoverageCounts counts = new CoverageCounts(evidence, filter);
    List<CoverageRow> all = new ArrayList<>();
    for (int model = 0; model < evidence.models().size(); model++) {
      if (filter.takes(evidence.models().get(model))
          && (lines.isEmpty() || lines.contains(model))
          && !counts.isReferenceName(model)) {
        CoverageRow row = counts.row(model);
        if (missing.stream().noneMatch(row.counts()::containsKey)) {
          all.add(row);
        }
      }
    }
    all.sort(order(choices.text("sort")));
    List<CoverageRow> shown = all.stream().skip(skip).limit(limit).toList();
    List<Exclusion> further = new ArrayList<>();
    int beyond = all.size() - skip - shown.size();
    if (beyond > 0) {
      further.add(new Exclusion("further models; see --limit and --skip", beyond));
    }
    List<String> disciplines = counts.disciplines(all);
    String without = missing.isEmpty() ? "" : " never tested in " + String.join(" or ", missing);
    return Answer.to(
            new Inquiry(
                kind(),
                "What was tested of each model" + without + filter.words() + "?",
                choices.given()))
        .summary(summary(all, disciplines, missing))
        .columns(columns(disciplines))
        .rows(shown)
        .excluded(further)
        .caveats(
            List.of(
                "A gap is a discipline in which other models of the same season class were tested and"
                    + " this one has no test that counts; disciplines that no such model was tested in are no gaps."))
        .whole(MODELS, all.size())
        .page(limit, skip, beyond > 0)
        .build();
  }

  private static Comparator<CoverageRow> order(String word) {
    Comparator<CoverageRow> byName = Comparator.comparing(CoverageRow::model);
    return switch (word) {
      case "tests" -> Comparator.comparingInt(CoverageRow::tests).reversed().thenComparing(byName);
      case "gaps" ->
          Comparator.comparingInt((CoverageRow row) -> row.gaps().size())
              .reversed()
              .thenComparing(byName);
      case "last" ->
          Comparator.comparing(
                  CoverageRow::lastYear, Comparator.nullsFirst(Comparator.naturalOrder()))
              .thenComparing(byName);
      default -> byName;
    };
  }

  private static String summary(
      List<CoverageRow> rows, List<String> disciplines, List<String> missing) {
    if (rows.isEmpty()) {
      return missing.isEmpty()
          ? "No model fits the filters."
          : "Every model that fits the filters was tested in " + String.join(" or ", missing) + ".";
    }
    if (!missing.isEmpty()) {
      return Wording.counted(rows.size(), "model")
          + (rows.size() == 1 ? " has" : " have")
          + " no test in "
          + String.join(" or ", missing)
          + " that counts.";
    }
    long never = rows.stream().filter(row -> row.tests() == 0).count();
    Map<String, Integer> gaps = new TreeMap<>();
    rows.forEach(row -> row.gaps().forEach(gap -> gaps.merge(gap, 1, Integer::sum)));
    String most =
        gaps.entrySet().stream()
            .max(Map.Entry.<String, Integer>comparingByValue())
            .map(
                gap ->
                    " The most frequent gap is %s: %d of them have no test in it."
                        .formatted(gap.getKey(), gap.getValue()))
            .orElse("");
    return "%s and %s%s.%s"
        .formatted(
            Wording.counted(rows.size(), "model"),
            Wording.counted(disciplines.size(), "discipline"),
            never == 0
                ? ""
                : ", %s of which no test that counts is known"
                    .formatted(Wording.counted(never, "model")),
            most);
  }

  private static Lead lastTests(CoverageRow row, Inquiry asked) {
    if (row.lastYear() == null) {
      return null;
    }
    String year = String.valueOf(row.lastYear());
    return Lead.to("tests")
        .with("model", row.model())
        .with("from", year)
        .with("to", year)
        .under(Filter.given(asked));
  }

  @Override
  public List<Column<CoverageRow>> columns() {
    return columns(List.of(DISCIPLINE));
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(MODELS);
  }

  private static List<Column<CoverageRow>> columns(List<String> disciplines) {
    List<Column<CoverageRow>> columns = new ArrayList<>();
    columns.add(Column.of("model", "Model", Format.MODEL, CoverageRow::model));
    columns.add(
        Column.of("season", "Season", Format.TEXT, CoverageRow::season)
            .means("Its season class: summer, winter or all-season."));
    columns.add(
        Column.of("tests", "Tests", Format.COUNT, CoverageRow::tests)
            .means("Tests that count.")
            .leadingTo(
                (row, asked) ->
                    row.tests() == 0
                        ? null
                        : Lead.to("tests").with("model", row.model()).under(Filter.given(asked))));
    columns.add(
        Column.of("lastYear", "Last", Format.YEAR, CoverageRow::lastYear)
            .means("Year of its last dated test.")
            .leadingTo(CoverageQuestion::lastTests));
    for (String discipline : disciplines) {
      columns.add(
          Column.<CoverageRow>of(
                  discipline, discipline, Format.COUNT, row -> row.counts().get(discipline))
              .means("Tests with a result in this discipline.")
              .leadingTo(
                  (row, asked) ->
                      Lead.to("tests")
                          .with("model", row.model())
                          .with("discipline", discipline)
                          .under(Filter.given(asked))));
    }
    columns.add(
        Column.<CoverageRow>of("gaps", "Gaps", Format.TEXTS, CoverageRow::gaps)
            .means(
                "Disciplines that other models of its season class were tested in, and it was not.")
            .asDetail());
    return List.copyOf(columns);
  }
}
