package org.griplore.query.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Footnote;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Likeness;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;

/** Puts a table's columns together: rows, sentences, what was left out, sources. */
final class TableAnswer {
  private final Evidence evidence;
  private final Likeness likeness;
  private final Map<Integer, String> field;
  private final Map<String, DisciplineColumn> columns;
  private final Map<String, List<ComparedFigure>> figures = new LinkedHashMap<>();
  private final List<WeightedTotal> totals;
  private final Citations citations;
  private final TableNotes notes;
  private final TreeSet<Integer> likeTests = new TreeSet<>();

  TableAnswer(
      Evidence evidence,
      Likeness likeness,
      Map<Integer, String> field,
      Map<String, DisciplineColumn> columns,
      Map<String, Double> weights,
      QueryContext context) {
    this.evidence = evidence;
    this.likeness = likeness;
    this.field = field;
    this.columns = columns;
    this.citations = new Citations(evidence);
    columns.forEach((key, column) -> figures.put(key, column.figures()));
    this.totals = weights.isEmpty() ? null : WeightedTotals.of(columns, weights, field.size());
    TreeSet<Integer> cited = new TreeSet<>();
    for (DisciplineColumn column : columns.values()) {
      for (int row = 0; row < field.size(); row++) {
        likeTests.addAll(column.likeTests(row));
      }
      column.network().entries().stream()
          .filter(entry -> field.containsKey(evidence.entries().model()[entry]))
          .forEach(cited::add);
    }
    cited.forEach(citations::citeEntry);
    this.notes = new TableNotes(evidence, likeness.isOpen() ? Set.of() : likeTests);
    List<String> names = field.keySet().stream().map(i -> evidence.models().get(i).name()).toList();
    notes.read(context, names, columns.keySet());
  }

  List<TableRow> rows() {
    List<TableRow> rows = new ArrayList<>();
    for (Map.Entry<Integer, String> tyre : field.entrySet()) {
      int row = rows.size();
      Map<String, ComparedFigure> its = new LinkedHashMap<>();
      String model = evidence.models().get(tyre.getKey()).name();
      figures.forEach(
          (key, column) ->
              its.put(
                  key,
                  column
                      .get(row)
                      .withFootnotes(notes.of(model, key, columns.get(key).likeTests(row)))));
      rows.add(
          new TableRow(
              model,
              tyre.getValue(),
              its,
              totals == null ? null : totals.get(row),
              notes.of(model, null, List.of())));
    }
    return rows;
  }

  private long cells(FigureBasis basis) {
    return figures.values().stream()
        .flatMap(List::stream)
        .filter(figure -> figure.basis().equals(basis.key()))
        .count();
  }

  String summary() {
    if (columns.isEmpty()) {
      return "No test says how these tyres compare.";
    }
    return "%s in %s: %s measured in %s, %d expected from other tests, %d without evidence."
        .formatted(
            Wording.counted(field.size(), "tyre"),
            Wording.counted(columns.size(), "discipline"),
            Wording.counted(cells(FigureBasis.MEASURED), "cell"),
            Wording.counted(likeTests.size(), likeness.isOpen() ? "test" : "like test"),
            cells(FigureBasis.EXPECTED),
            cells(FigureBasis.NONE));
  }

  List<Exclusion> excluded(Exclusions excluded) {
    columns
        .values()
        .forEach(
            column ->
                column
                    .network()
                    .excluded()
                    .list()
                    .forEach(left -> excluded.add(left.reason(), left.count())));
    excluded.add("further notes on these tyres; `find` has them", notes.further());
    return excluded.list();
  }

  List<Footnote> footnotes() {
    return notes.list();
  }

  List<String> caveats(Reference reference) {
    List<String> caveats = new ArrayList<>();
    if (!likeness.isOpen()) {
      caveats.add(
          "Like tests: " + likeness.meaning() + "; a test that does not state it is not like.");
    }
    Map<String, List<String>> levels = disciplinesOfLevel();
    if (!levels.isEmpty()) {
      caveats.add(
          "Values stand on the level of one test a column, so that they can be compared: "
              + (levels.size() == 1
                  ? levels.keySet().iterator().next()
                  : levels.entrySet().stream()
                      .map(
                          level ->
                              level.getKey() + " (" + String.join(", ", level.getValue()) + ")")
                      .collect(Collectors.joining("; ")))
              + ".");
    }
    if (cells(FigureBasis.EXPECTED) > 0) {
      caveats.add(
          "Values with \u2248 are expected from tests of other sizes or cars, not measured in like ones.");
    }
    if (reference.chosen() != null) {
      long without =
          figures.values().stream()
              .flatMap(List::stream)
              .filter(
                  figure ->
                      !figure.basis().equals(FigureBasis.NONE.key()) && figure.delta() == null)
              .count();
      if (without > 0) {
        caveats.add(
            evidence.models().get(reference.chosen()).name()
                + " has no figure in some disciplines: no differences there.");
      }
    }
    if (totals != null) {
      caveats.add(
          "The total is the weighted mean of differences, each in spreads of the archive's models;"
              + " a tyre without a weighted discipline has no place in it.");
    }
    if (!columns.isEmpty()) {
      caveats.add(CompareOptions.PER_CENT);
    }
    CommonOptions.makerCaveat(citations).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }

  /** The tests whose levels values stand on, by key, with their disciplines. */
  private Map<String, List<String>> disciplinesOfLevel() {
    Map<String, List<String>> levels = new TreeMap<>();
    columns.forEach(
        (key, column) -> {
          if (column.levelKey() != null) {
            levels.computeIfAbsent(column.levelKey(), none -> new ArrayList<>()).add(key);
          }
        });
    return levels;
  }

  Citations citations() {
    return citations;
  }

  /** Key of the test on whose level the values of each discipline stand. */
  Map<String, String> levels() {
    Map<String, String> levels = new LinkedHashMap<>();
    columns.forEach((key, column) -> levels.put(key, column.levelKey()));
    levels.values().removeIf(Objects::isNull);
    return levels;
  }

  /** The bounds of a like test and the like tests; null where any test is like. */
  Map<String, Object> like() {
    if (likeness.isOpen()) {
      return null;
    }
    Map<String, Object> like = new TreeMap<>(likeness.bounds());
    like.put("tests", likeTests.stream().map(test -> evidence.tests().get(test).key()).toList());
    return like;
  }
}
