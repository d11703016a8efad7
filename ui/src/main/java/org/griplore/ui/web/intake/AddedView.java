package org.griplore.ui.web.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Finding;
import org.griplore.ui.web.link.Addresses;

/**
 * What a reading added, with where to look at it.
 *
 * @param same whether it was in the archive already
 * @param tests its tests
 * @param disciplines in which it has results
 */
public record AddedView(
    String name, boolean same, List<Link> tests, List<Link> disciplines, List<Finding> findings) {
  /** Where to look. */
  public record Link(String label, String address) {}

  public static Optional<AddedView> of(QueryContext queryContext, String number, boolean same) {
    Optional<Revision> revision =
        queryContext.archive().revisions().stream()
            .filter(reading -> String.valueOf(reading.id()).equals(number))
            .findFirst();
    return revision.map(reading -> of(queryContext, reading, same));
  }

  private static AddedView of(QueryContext queryContext, Revision reading, boolean same) {
    Evidence evidence = queryContext.evidence();
    List<ReportRecord> reports = evidence.reports();
    TreeSet<Integer> tests = new TreeSet<>();
    boolean[] told = new boolean[reports.size()];
    for (int i = 0; i < reports.size(); i++) {
      told[i] = reports.get(i).revision() == reading.id();
      if (told[i]) {
        tests.add(reports.get(i).test());
      }
    }
    TreeSet<Integer> disciplines = new TreeSet<>();
    for (int i = 0; i < evidence.results().count(); i++) {
      if (told[evidence.entries().report()[evidence.results().entry()[i]]]) {
        disciplines.add((int) evidence.results().discipline()[i]);
      }
    }
    List<Link> toTests = new ArrayList<>();
    for (int test : tests) {
      String key = evidence.tests().get(test).key();
      toTests.add(new Link(key, Addresses.of("test", Map.of("test", List.of(key)))));
    }
    List<Link> toDisciplines = new ArrayList<>();
    for (int discipline : disciplines) {
      String key = evidence.disciplines().get(discipline);
      String label = queryContext.catalogue().find(key).map(Discipline::name).orElse(key);
      toDisciplines.add(
          new Link(label, Addresses.of("standings", Map.of("discipline", List.of(key)))));
    }
    List<Finding> findings =
        queryContext.archive().findingsOf(reading.id()).stream()
            .map(record -> record.finding())
            .toList();
    return new AddedView(reading.name(), same, toTests, toDisciplines, findings);
  }
}
