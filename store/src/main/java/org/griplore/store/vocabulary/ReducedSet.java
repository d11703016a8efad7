package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Objects;

/**
 * One set of tyres at its place in the order of the day.
 *
 * @param sequence the log's number of the place
 * @param model the tyre's model
 * @param role reference set or candidate
 * @param cycle the cycle a candidate was driven in, from 1; null for a reference
 * @param mean mean of the runs that count; null when none does
 * @param deviation standard deviation (n - 1) of these; null for fewer than two
 * @param counted how many runs count
 * @param reference the reference at a candidate's place; null without one
 * @param referenceWords how that reference is made up; empty without one
 * @param effect natural logarithm of the ratio to the reference, or the difference; null without
 *     one
 * @param effectError its standard error; null when unknown
 * @param valid whether the set stands under the limits
 * @param standing the same in words, with the consequence
 * @param reasons the limits that were broken, a sentence each
 * @param runs in the log's order
 */
public record ReducedSet(
    int sequence,
    String model,
    LoggedRun.Role role,
    Integer cycle,
    Double mean,
    Double deviation,
    int counted,
    Double reference,
    String referenceWords,
    Double effect,
    Double effectError,
    boolean valid,
    String standing,
    List<String> reasons,
    List<ReducedRun> runs) {
  /** Keeps the lists from changing. */
  public ReducedSet {
    Objects.requireNonNull(model);
    Objects.requireNonNull(role);
    Objects.requireNonNull(referenceWords);
    Objects.requireNonNull(standing);
    reasons = List.copyOf(reasons);
    runs = List.copyOf(runs);
  }

  /**
   * A run of the set.
   *
   * @param run as logged
   * @param figure what it measured, in the reduction's unit; null when it did not
   * @param leftOut why it does not count; null when it does
   * @param flag what is odd about it, as an outlier that counts all the same; null when nothing is
   */
  public record ReducedRun(LoggedRun run, Double figure, String leftOut, String flag) {
    /** Checks the run. */
    public ReducedRun {
      Objects.requireNonNull(run);
    }
  }
}
