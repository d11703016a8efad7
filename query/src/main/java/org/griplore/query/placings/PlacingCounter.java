package org.griplore.query.placings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Ranking;
import org.griplore.query.ranking.CreditSum;
import org.griplore.query.ranking.TestCredit;
import org.griplore.query.ranking.TopShare;
import org.griplore.query.ranking.WilsonInterval;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.TestDate;

/** Counts one model's places after another, in one discipline and under one filter. */
final class PlacingCounter {
  private static final double LEVEL = 0.95;

  private final Evidence evidence;
  private final Ranking ranking;
  private final Filter filter;
  private final int top;
  private final int minField;
  private final TopShare ties;
  private final Map<Integer, TestCredit> credits = new HashMap<>();
  private final Exclusions excluded;
  private final Citations citations;

  PlacingCounter(
      Evidence evidence,
      int discipline,
      Filter filter,
      int top,
      int minField,
      TopShare ties,
      Exclusions excluded,
      Citations citations) {
    this.evidence = evidence;
    this.ranking = evidence.ranking(discipline);
    this.filter = filter;
    this.top = top;
    this.minField = minField;
    this.ties = ties;
    this.excluded = excluded;
    this.citations = citations;
  }

  /** The model's row; empty when no test counts. What does not count goes to the exclusions. */
  Optional<PlacingRow> count(int model) {
    countUnranked(model);
    List<Placing> places = new ArrayList<>();
    List<TestCredit> tests = new ArrayList<>();
    int makerTests = 0;
    int makerWithin = 0;
    Integer firstYear = null;
    Integer lastYear = null;
    int[] rows = ranking.rowsOfModel().rows();
    for (int i = ranking.rowsOfModel().from(model); i < ranking.rowsOfModel().to(model); i++) {
      int row = rows[i];
      int entry = evidence.results().entry()[ranking.result(row)];
      Optional<String> reason = reasonLeftOut(row);
      if (reason.isPresent()) {
        excluded.add(reason.get());
        if (reason.get().equals(Filter.BY_MAKER) && reasonAgainst(row).isEmpty()) {
          makerTests++;
          makerWithin += ranking.place(row) <= top ? 1 : 0;
        }
        continue;
      }
      TestRecord test = evidence.tests().get(evidence.entries().test()[entry]);
      TestDate date = test.details().date();
      if (date != null) {
        firstYear = firstYear == null ? date.year() : Math.min(firstYear, date.year());
        lastYear = lastYear == null ? date.year() : Math.max(lastYear, date.year());
      }
      places.add(placing(row, entry, test, date));
      tests.add(credit(row));
    }
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(
            row(
                evidence.models().get(model).name(),
                places,
                tests,
                firstYear,
                lastYear,
                makerTests,
                makerWithin));
  }

  /** Entries of the model in tests that say nothing in the discipline. */
  private void countUnranked(int model) {
    for (int i = evidence.entriesOfModel().from(model);
        i < evidence.entriesOfModel().to(model);
        i++) {
      int entry = evidence.entriesOfModel().rows()[i];
      if (!ranking.has(entry)) {
        excluded.add(filter.reasonAgainst(entry).orElse("no figure in the discipline"));
      }
    }
  }

  private Optional<String> reasonLeftOut(int row) {
    Optional<String> filtered = filter.reasonAgainstResult(ranking.result(row));
    return filtered.isPresent() ? filtered : reasonAgainst(row);
  }

  private Optional<String> reasonAgainst(int row) {
    switch (ranking.basis(row)) {
      case NONE -> {
        return Optional.of("no place published, and none can be computed");
      }
      case REPEATED -> {
        return Optional.of("further results of a model in a test, averaged with its first");
      }
      case TOLD -> {
        return Optional.of("results that another report of the test has told");
      }
      default -> {
        // it has a place
      }
    }
    if (ranking.field(row) < minField) {
      return Optional.of("field of " + (minField - 1) + " or fewer");
    }
    return Optional.empty();
  }

  private Placing placing(int row, int entry, TestRecord test, TestDate date) {
    return new Placing(
        test.key(),
        date == null ? null : date.text(),
        ranking.place(row),
        ranking.field(row),
        ranking.named(row),
        ranking.tied(row),
        ranking.basis(row).key(),
        citations.citeEntry(entry),
        evidence.results().id()[ranking.result(row)]);
  }

  /** What places are worth in the row's test: worked out once a test. */
  private TestCredit credit(int row) {
    return credits.computeIfAbsent(
        ranking.testOf(row),
        test -> TestCredit.of(ranking.placesInTestOf(row), ranking.field(row), top, ties));
  }

  private PlacingRow row(
      String model,
      List<Placing> places,
      List<TestCredit> tests,
      Integer firstYear,
      Integer lastYear,
      int makerTests,
      int makerWithin) {
    double within = 0;
    double expected = 0;
    double[] credit = new double[places.size()];
    int[] sorted = new int[places.size()];
    for (int i = 0; i < credit.length; i++) {
      Placing placing = places.get(i);
      credit[i] = tests.get(i).of(placing.place(), top, ties);
      within += credit[i];
      expected += tests.get(i).expected();
      sorted[i] = placing.place();
    }
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2.0;
    WilsonInterval share = WilsonInterval.of(within, places.size(), LEVEL);
    return new PlacingRow(
        model,
        places.size(),
        ties == TopShare.WHOLE ? (Number) (int) within : (Number) within,
        within / places.size(),
        share.low(),
        share.high(),
        expected,
        CreditSum.atLeast(tests, credit),
        sorted[0],
        median,
        firstYear,
        lastYear,
        makerTests,
        makerWithin,
        List.copyOf(places));
  }
}
