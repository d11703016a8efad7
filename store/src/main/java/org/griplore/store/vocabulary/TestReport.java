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
 */
public record TestReport(
    String key, Details details, List<Entry> entries, List<Note> notes, List<LoggedRun> runs) {
  /** Keeps the lists from changing. */
  public TestReport {
    Objects.requireNonNull(key);
    Objects.requireNonNull(details);
    entries = List.copyOf(entries);
    notes = List.copyOf(notes);
    runs = List.copyOf(runs);
  }
}
