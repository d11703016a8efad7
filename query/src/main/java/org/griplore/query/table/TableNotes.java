package org.griplore.query.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.griplore.query.answer.Footnote;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.question.QueryContext;
import org.griplore.store.text.NoteFilter;
import org.griplore.store.text.NoteHit;
import org.griplore.store.text.NoteHits;
import org.griplore.store.text.NoteQuery;
import org.griplore.store.vocabulary.Details;

/** Numbers a table's footnotes: the conditions of its like tests, then the newest notes. */
final class TableNotes {
  /** With more like tests than this, the list of sources has to do. */
  static final int MOST_CONDITIONS = 12;

  static final int MOST_NOTES = 12;

  private static final int LONGEST = 160;

  private final Set<String> likeTests;
  private final List<Footnote> footnotes = new ArrayList<>();
  private final Map<Integer, Integer> numberOfTest = new LinkedHashMap<>();
  private final Map<List<String>, List<Integer>> numbersOfNotes = new HashMap<>();
  private int further;

  /**
   * Starts with the conditions.
   *
   * @param likeTests positions of the like tests; none when every test is like
   */
  TableNotes(Evidence evidence, Collection<Integer> likeTests) {
    if (likeTests.size() <= MOST_CONDITIONS) {
      for (int test : new TreeSet<>(likeTests)) {
        numberOfTest.put(test, footnotes.size() + 1);
        String key = evidence.tests().get(test).key();
        String text = conditions(evidence.tests().get(test).details());
        footnotes.add(
            new Footnote(footnotes.size() + 1, "Test " + key + ": " + text, key, null, null));
      }
    }
    this.likeTests =
        new HashSet<>(likeTests.stream().map(test -> evidence.tests().get(test).key()).toList());
  }

  private static String conditions(Details test) {
    List<String> parts = new ArrayList<>();
    add(parts, test.date() == null ? null : test.date().text(), "%s");
    add(parts, test.size(), "%s");
    add(parts, test.vehicle(), "%s");
    add(parts, test.vehicleMassKg(), "%.0f kg");
    add(parts, test.venue(), "%s");
    add(parts, test.surfaceC(), "surface %.0f \u00b0C");
    add(parts, test.airC(), "air %.0f \u00b0C");
    return parts.isEmpty() ? "conditions not stated" : String.join(", ", parts);
  }

  private static void add(List<String> parts, Object value, String format) {
    if (value != null) {
      parts.add(String.format(Locale.ROOT, format, value));
    }
  }

  /**
   * Adds the newest note on each tyre as a whole and in each discipline, from the like tests where
   * there are any, else from all.
   */
  void read(QueryContext context, List<String> models, Set<String> disciplines) {
    NoteFilter filter =
        new NoteFilter(
            Set.copyOf(models),
            Set.of(),
            likeTests,
            Set.of(),
            Set.of(),
            Set.of(),
            Set.of(),
            null,
            null);
    NoteHits hits = context.notes().search(new NoteQuery("", filter, 1000, 0));
    int shown = 0;
    for (NoteHit hit : hits.hits()) {
      boolean about = hit.discipline() == null || disciplines.contains(hit.discipline());
      List<Integer> numbers =
          numbersOfNotes.computeIfAbsent(
              Arrays.asList(hit.model(), hit.discipline()), key -> new ArrayList<>());
      if (about && numbers.isEmpty() && shown < MOST_NOTES) {
        shown++;
        numbers.add(footnotes.size() + 1);
        footnotes.add(
            new Footnote(
                footnotes.size() + 1, told(hit), hit.test(), hit.model(), hit.discipline()));
      }
    }
    further = (int) (hits.total() - shown);
  }

  private static String told(NoteHit hit) {
    String text = hit.text().strip().replaceAll("\\s+", " ");
    if (text.length() > LONGEST) {
      text =
          text.substring(0, Math.max(text.lastIndexOf(' ', LONGEST), LONGEST / 2)).strip()
              + " \u2026";
    }
    return "%s%s: \u201c%s\u201d (%s)"
        .formatted(
            hit.model(), hit.discipline() == null ? "" : ", " + hit.discipline(), text, hit.test());
  }

  /** Numbers for a cell, or with no discipline and no tests for a tyre as a whole. */
  List<Integer> of(String model, String discipline, List<Integer> tests) {
    TreeSet<Integer> numbers =
        new TreeSet<>(numbersOfNotes.getOrDefault(Arrays.asList(model, discipline), List.of()));
    tests.stream().filter(numberOfTest::containsKey).map(numberOfTest::get).forEach(numbers::add);
    return List.copyOf(numbers);
  }

  /** How many notes on the tyres were not taken. */
  int further() {
    return further;
  }

  List<Footnote> list() {
    return footnotes;
  }
}
