package org.griplore.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.griplore.ingest.forms.TestSigns;
import org.griplore.store.archive.ToldTests;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.TestReport;

/**
 * Decides which test a source's report belongs to. A key that the source gives is kept. Under a key
 * that is made of a title or a file name, reports join only where their figures agree and neither
 * day, size nor vehicle speaks against it; else the later one is a test of its own. The same
 * figures under any such key are a copy. What a joined report tells otherwise is a finding.
 */
final class TestJoining {
  /** So many equal figures are no chance. */
  private static final int COPY = 4;

  private static final int MOST_FINDINGS = 100;
  private static final int MOST_KEPT = 32;

  private final ToldTests others;
  private final List<String> before;
  private final Consumer<Finding> findings;
  private final Set<String> notGiven = new HashSet<>();
  private final Map<String, String> decided = new HashMap<>();
  private final Map<String, ToldFigures> figures = new HashMap<>();
  private int told;

  /**
   * Joins the reports of one source.
   *
   * @param before keys of the tests that the source told when it was read last
   */
  TestJoining(ToldTests others, List<String> before, Consumer<Finding> findings) {
    this.others = others;
    this.before = before;
    this.findings = findings;
  }

  /** The key of reports that follow is not given by the source. */
  void keyNotGiven(String key) {
    notGiven.add(key);
  }

  /**
   * The key of the test that a report belongs to.
   *
   * @param report with the models that its names mean
   */
  String key(TestReport report) {
    String key =
        notGiven.contains(report.key())
            ? decided.computeIfAbsent(report.key(), made -> decide(made, report))
            : report.key();
    if (others.has(key)) {
      contradictions(report, figures(key));
    }
    return key;
  }

  private String decide(String made, TestReport report) {
    Optional<String> earlier =
        before.stream().filter(key -> isNumbered(key, made) && isFree(key)).findFirst();
    if (earlier.isPresent()) {
      return earlier.get();
    }
    String key = made;
    int number = 1;
    while (others.has(key) && !(isFree(key) && joins(report, key))) {
      number++;
      key = made + "-" + number;
    }
    if (others.has(key)) {
      return key;
    }
    Optional<String> copied = copied(report);
    if (copied.isPresent()) {
      tellCopy(report, copied.get());
      return copied.get();
    }
    if (number > 1) {
      tellApart(report, made, key);
    }
    return key;
  }

  private static boolean isNumbered(String key, String made) {
    return key.equals(made)
        || key.startsWith(made + "-") && key.substring(made.length() + 1).matches("[0-9]{1,4}");
  }

  /** Two reports that a source tells apart are never one test. */
  private boolean isFree(String key) {
    return !decided.containsValue(key);
  }

  private boolean joins(TestReport report, String key) {
    if (isApart(report, key)) {
      return false;
    }
    ToldFigures there = figures(key);
    ToldFigures.Agreement agreement = there.agreement(report);
    if (agreement.told() == 0 || there.isEmpty()) {
      return true;
    }
    if (agreement.shared() == 0) {
      boolean sameDay =
          report.details().title() != null
              && report.details().date() != null
              && others.details(key).stream().anyMatch(details -> details.date() != null);
      return sameDay && there.hasHalfOfModels(report);
    }
    return 2 * agreement.equal() >= agreement.shared();
  }

  private boolean isApart(TestReport report, String key) {
    for (Details details : others.details(key)) {
      if (TestSigns.apart(report.details(), details).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** The test of which a report tells all figures over again. */
  private Optional<String> copied(TestReport report) {
    return ToldFigures.first(report).stream()
        .flatMap(
            first ->
                others
                    .holding(
                        first.entry().model(), first.result().discipline(), first.result().value())
                    .stream())
        .filter(key -> isFree(key) && !isApart(report, key))
        .filter(
            key -> {
              ToldFigures.Agreement agreement = figures(key).agreement(report);
              return agreement.equal() >= COPY && agreement.equal() == agreement.told();
            })
        .findFirst();
  }

  private ToldFigures figures(String key) {
    if (figures.size() >= MOST_KEPT && !figures.containsKey(key)) {
      figures.clear();
    }
    return figures.computeIfAbsent(key, k -> ToldFigures.of(others.figures(k)));
  }

  private void contradictions(TestReport report, ToldFigures there) {
    List<Finding> found = new ArrayList<>(there.contradictions(report));
    for (Finding finding : found) {
      if (told++ < MOST_FINDINGS) {
        findings.accept(finding);
      }
    }
  }

  private void tellCopy(TestReport report, String key) {
    findings.accept(
        new Finding(
            Finding.Kind.ASSUMED,
            cell(report),
            key,
            "another test; all its figures are those of test " + key + ", so it is taken as a copy",
            "give it its own key (`Test: NAME` above the table) if it is another test"));
  }

  private void tellApart(TestReport report, String made, String key) {
    findings.accept(
        new Finding(
            Finding.Kind.ASSUMED,
            cell(report),
            made,
            "the same test as another source's "
                + made
                + "; the figures or the day, size or vehicle differ, so it is test "
                + key,
            "give both the same key (`Test: NAME` above the table) if they are one test"));
  }

  private static Cell cell(TestReport report) {
    return report.entries().isEmpty() ? null : report.entries().get(0).name();
  }
}
