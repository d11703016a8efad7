package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * One test as one source tells it.
 *
 * @param key what the test is known by across sources: the source's own key where it gives one
 * @param details what is said of the test as a whole
 * @param entries the models tested; the order is the source's
 * @param notes what was written down
 * @param runs the runs, where the source is a run log
 * @param reductions how they were reduced, one a discipline that could be
 * @param weights the weights it gives disciplines in its total; empty where it states none
 */
public record TestReport(
    String key,
    Details details,
    List<Entry> entries,
    List<Note> notes,
    List<LoggedRun> runs,
    List<Reduction> reductions,
    List<ReportWeight> weights) {
  /** Keeps the lists from changing. */
  public TestReport {
    Objects.requireNonNull(key);
    Objects.requireNonNull(details);
    entries = List.copyOf(entries);
    notes = List.copyOf(notes);
    runs = List.copyOf(runs);
    reductions = List.copyOf(reductions);
    weights = List.copyOf(weights);
  }

  /** A report that states no weights. */
  public TestReport(
      String key,
      Details details,
      List<Entry> entries,
      List<Note> notes,
      List<LoggedRun> runs,
      List<Reduction> reductions) {
    this(key, details, entries, notes, runs, reductions, List.of());
  }

  /** A report of which no runs were reduced. */
  public TestReport(
      String key, Details details, List<Entry> entries, List<Note> notes, List<LoggedRun> runs) {
    this(key, details, entries, notes, runs, List.of(), List.of());
  }

  /** The same told of a test of another key. */
  public TestReport under(String other) {
    return other.equals(key)
        ? this
        : new TestReport(other, details, entries, notes, runs, reductions, weights);
  }
}
