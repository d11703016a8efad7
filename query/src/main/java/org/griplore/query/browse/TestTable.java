package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.browse.TestQuestion.TyreRow;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Ranking;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Unit;

/** Puts one test's results into a table: tyres down, disciplines across. */
final class TestTable {
  private final Evidence evidence;
  private final int test;
  private final Integer reference;
  private final Exclusions excluded;
  private final Map<String, String> unitOf = new HashMap<>();
  private final Map<String, Integer> base = new HashMap<>();
  private final Map<List<Object>, TyreRow> rows = new LinkedHashMap<>();
  private boolean hasReference;

  TestTable(
      Evidence evidence, int test, Integer reference, Exclusions excluded, Citations citations) {
    this.evidence = evidence;
    this.test = test;
    this.reference = reference;
    this.excluded = excluded;
    List<Integer> results = results();
    results.forEach(this::learnUnit);
    results.forEach(this::learnBase);
    evidence.tests().get(test).reports().forEach(citations::cite);
    results.forEach(this::place);
  }

  private List<Integer> results() {
    List<Integer> results = new ArrayList<>();
    for (int e = evidence.entriesOfTest().from(test); e < evidence.entriesOfTest().to(test); e++) {
      int entry = evidence.entriesOfTest().rows()[e];
      hasReference |= reference != null && evidence.entries().model()[entry] == reference;
      row(entry);
      for (int r = evidence.resultsOfEntry().from(entry);
          r < evidence.resultsOfEntry().to(entry);
          r++) {
        results.add(evidence.resultsOfEntry().rows()[r]);
      }
    }
    return results;
  }

  private TyreRow row(int entry) {
    String size = evidence.entries().size()[entry];
    int model = evidence.entries().model()[entry];
    return rows.computeIfAbsent(
        java.util.Arrays.asList(model, size),
        key -> new TyreRow(evidence.models().get(model).name(), size, new LinkedHashMap<>()));
  }

  private String discipline(int result) {
    return evidence.disciplines().get(evidence.results().discipline()[result]);
  }

  private String unit(int result) {
    int unit = evidence.results().unit()[result];
    return unit < 0 ? null : evidence.units().get(unit);
  }

  private void learnUnit(int result) {
    unitOf.merge(
        discipline(result),
        unit(result) == null ? "" : unit(result),
        (a, b) -> a.isEmpty() ? b : a);
  }

  /** The value that differences are to: the reference's, or else the best, in the table's unit. */
  private void learnBase(int result) {
    String key = discipline(result);
    double value = evidence.results().value()[result];
    if (Double.isNaN(value) || !unitOf.get(key).equals(unit(result))) {
      return;
    }
    if (reference != null) {
      if (model(result) == reference) {
        base.putIfAbsent(key, result);
      }
      return;
    }
    int sign =
        evidence.catalogue().get(key).directionOf(Unit.ofSymbol(unit(result)).orElseThrow()).sign();
    int best = base.computeIfAbsent(key, first -> result);
    if (sign * (value - evidence.results().value()[best]) > 0) {
      base.put(key, result);
    }
  }

  private int model(int result) {
    return evidence.entries().model()[evidence.results().entry()[result]];
  }

  private void place(int result) {
    TyreRow row = row(evidence.results().entry()[result]);
    String key = discipline(result);
    if (row.figures().containsKey(key)) {
      excluded.add("figures told again by a second report");
      return;
    }
    row.figures().put(key, figure(result, key));
  }

  private TestFigure figure(int result, String key) {
    ResultColumns results = evidence.results();
    Double value = Double.isNaN(results.value()[result]) ? null : (Double) results.value()[result];
    Double spread =
        Double.isNaN(results.spread()[result]) ? null : (Double) results.spread()[result];
    Integer runs = results.runs()[result] == 0 ? null : (Integer) results.runs()[result];
    Ranking ranking = evidence.ranking(results.discipline()[result]);
    int row = ranking.rowOf(result, evidence);
    boolean placed = ranking.place(row) > 0;
    Delta delta = delta(result, key);
    return new TestFigure(
        key,
        value,
        unit(result),
        spread,
        runs,
        placed ? (Integer) ranking.place(row) : null,
        placed ? ranking.basis(row).key() : null,
        delta == null ? null : (Double) delta.delta(),
        delta == null ? null : delta.unit(),
        delta == null ? null : delta.logDifference(),
        results.id()[result]);
  }

  /** Null where there is nothing to compare with, or only in another unit. */
  private Delta delta(int result, String key) {
    double value = evidence.results().value()[result];
    Integer to = base.get(key);
    if (Double.isNaN(value) || to == null || !unitOf.get(key).equals(unit(result))) {
      return null;
    }
    Unit unit = Unit.ofSymbol(unit(result)).orElseThrow();
    return Delta.of(evidence.catalogue().get(key), unit, value, evidence.results().value()[to]);
  }

  /** The way from a result's value to its difference; empty where there is none. */
  List<ProvenanceStep> steps(int result) {
    String key = discipline(result);
    Delta delta = delta(result, key);
    if (delta == null) {
      return List.of();
    }
    int to = base.get(key);
    String name =
        (reference == null ? "the best of the test, " : "")
            + evidence.models().get(model(to)).name();
    return delta.steps(
        evidence.catalogue().get(key),
        Unit.ofSymbol(unit(result)).orElseThrow(),
        evidence.results().value()[result],
        evidence.results().value()[to],
        name);
  }

  boolean hasReference() {
    return hasReference;
  }

  /** The disciplines that have results here, in the catalogue's order. */
  List<String> disciplines() {
    return evidence.catalogue().all().stream()
        .map(Discipline::key)
        .filter(unitOf::containsKey)
        .toList();
  }

  /** The unit of each discipline's column; empty where only places are known. */
  Map<String, String> unitOf() {
    return unitOf;
  }

  /** Tyres by overall place where there is one, then by name. */
  List<TyreRow> rows() {
    List<TyreRow> sorted = new ArrayList<>(rows.values());
    sorted.sort(
        Comparator.comparing(
                TestTable::overallPlace, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(TyreRow::model));
    return sorted;
  }

  private static Integer overallPlace(TyreRow row) {
    TestFigure overall = row.figures().get("overall");
    return overall == null ? null : overall.place();
  }
}
