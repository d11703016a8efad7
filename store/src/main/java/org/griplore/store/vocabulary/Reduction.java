package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * How the runs of one discipline of a log became results: what is needed to judge them.
 *
 * @param discipline catalogue key
 * @param measure what runs were averaged in, in words
 * @param unit unit of set means, references, levels and steps
 * @param byRatio whether sets are compared by ratio, else by difference
 * @param better which way is better in that unit
 * @param coastBy class of tyre whose coast-by correction the levels had, {@code C1} say; null
 *     without
 * @param fromKmh nominal speed at the start of the window; null where none applies
 * @param toKmh nominal speed at its end; null likewise
 * @param trace what the reference did over the day
 * @param level the reference's figure that results stand on; null without a reference
 * @param levelWords what that level means
 * @param cycles the cycles of the day with the reference's drift, a sentence each
 * @param limits the validity limits it was judged by, a sentence each
 * @param sets in the order of the day
 */
public record Reduction(
    String discipline,
    String measure,
    Unit unit,
    boolean byRatio,
    Direction better,
    String coastBy,
    Double fromKmh,
    Double toKmh,
    Trace trace,
    Double level,
    String levelWords,
    List<String> cycles,
    List<String> limits,
    List<ReducedSet> sets) {
  /** Keeps the lists from changing. */
  public Reduction {
    Objects.requireNonNull(discipline);
    Objects.requireNonNull(measure);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(better);
    Objects.requireNonNull(trace);
    Objects.requireNonNull(levelWords);
    cycles = List.copyOf(cycles);
    limits = List.copyOf(limits);
    sets = List.copyOf(sets);
  }

  /**
   * What the reference did over the day; figures are null where they could not be computed.
   *
   * @param words what explains it best
   * @param slope change of the reference a place
   * @param trendP p of the trend
   * @param stepAfter the sequence number after which a step fits best
   * @param stepSize later mean less earlier mean
   * @param stepP p of the step, corrected for the search
   */
  public record Trace(
      String words, Double slope, Double trendP, Integer stepAfter, Double stepSize, Double stepP) {
    /** Checks the words. */
    public Trace {
      Objects.requireNonNull(words);
    }
  }
}
