package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.griplore.query.browse.CoverageQuestion.CoverageRow;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.TestDate;

/** Counts the tests of each model in each discipline, under one filter. */
final class CoverageCounts {
  private final Evidence evidence;
  private final Filter filter;

  /** Disciplines that any model of a season class was ever tested in, whatever the filter. */
  private final Map<SeasonClass, Set<String>> usual = new HashMap<>();

  CoverageCounts(Evidence evidence, Filter filter) {
    this.evidence = evidence;
    this.filter = filter;
    for (int result = 0; result < evidence.results().count(); result++) {
      ModelRecord model =
          evidence.models().get(evidence.entries().model()[evidence.results().entry()[result]]);
      usual
          .computeIfAbsent(model.season(), season -> new TreeSet<>())
          .add(evidence.disciplines().get(evidence.results().discipline()[result]));
    }
  }

  /** A name that is of no maker or line and in no test: that of a reference set. */
  boolean isReferenceName(int model) {
    ModelRecord record = evidence.models().get(model);
    return record.maker() == null
        && record.line() == null
        && evidence.entriesOfModel().count(model) == 0;
  }

  CoverageRow row(int model) {
    int[] counts = new int[evidence.disciplines().size()];
    int[] lastTest = new int[counts.length];
    Arrays.fill(lastTest, -1);
    Set<Integer> tests = new TreeSet<>();
    for (int i = evidence.entriesOfModel().from(model);
        i < evidence.entriesOfModel().to(model);
        i++) {
      int entry = evidence.entriesOfModel().rows()[i];
      if (filter.reasonAgainst(entry).isEmpty()) {
        int test = evidence.entries().test()[entry];
        tests.add(test);
        count(entry, test, counts, lastTest);
      }
    }
    ModelRecord record = evidence.models().get(model);
    Map<String, Integer> byDiscipline = new LinkedHashMap<>();
    for (Discipline discipline : evidence.catalogue().all()) {
      int position = evidence.discipline(discipline.key());
      if (position >= 0 && counts[position] > 0) {
        byDiscipline.put(discipline.key(), counts[position]);
      }
    }
    List<String> gaps = new ArrayList<>(usual.getOrDefault(record.season(), Set.of()));
    gaps.removeAll(byDiscipline.keySet());
    return new CoverageRow(
        record.name(),
        record.season() == null ? null : record.season().key(),
        tests.size(),
        tests.stream()
            .map(test -> evidence.tests().get(test).details().date())
            .filter(date -> date != null)
            .map(TestDate::year)
            .max(Integer::compare)
            .orElse(null),
        byDiscipline,
        gaps);
  }

  /** A test that tells of the model twice, in two sizes or two reports, counts once. */
  private void count(int entry, int test, int[] counts, int[] lastTest) {
    for (int i = evidence.resultsOfEntry().from(entry);
        i < evidence.resultsOfEntry().to(entry);
        i++) {
      int discipline = evidence.results().discipline()[evidence.resultsOfEntry().rows()[i]];
      if (lastTest[discipline] != test) {
        counts[discipline]++;
        lastTest[discipline] = test;
      }
    }
  }

  /** The disciplines that rows or their gaps name, as the catalogue orders them. */
  List<String> disciplines(List<CoverageRow> rows) {
    Set<String> named = new TreeSet<>();
    for (CoverageRow row : rows) {
      named.addAll(row.counts().keySet());
      named.addAll(row.gaps());
    }
    return evidence.catalogue().all().stream()
        .map(Discipline::key)
        .filter(named::contains)
        .toList();
  }
}
