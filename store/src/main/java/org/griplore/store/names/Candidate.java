package org.griplore.store.names;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A model that a written name could mean.
 *
 * @param model the model's full name
 * @param score how alike the names are, from 0 to 1
 * @param differences what sets the names apart; none when they are one name, or (with a score of 0)
 *     when only an earlier file was read so
 * @param beside a test in which both names stand, and in how many more; null when in none
 */
public record Candidate(
    String model, double score, List<NameDifference> differences, Beside beside) {
  /** More slips than this are no slips. */
  private static final int MOST_SLIPS = 2;

  /** Names that stand side by side in a test are rarely one model. */
  private static final double SIDE_BY_SIDE = 0.5;

  /**
   * Where two names stand side by side.
   *
   * @param test the key of the first test
   * @param more in how many further tests
   */
  public record Beside(String test, int more) {}

  /** Keeps the list from changing. */
  public Candidate {
    differences = List.copyOf(differences);
  }

  /** A candidate of which nothing is known but how alike the names are. */
  public Candidate(String model, double score, List<NameDifference> differences) {
    this(model, score, differences, null);
  }

  /** The same, of names that stand side by side in tests. */
  public Candidate standingBeside(String test, int more) {
    return new Candidate(model, SIDE_BY_SIDE * score, differences, new Beside(test, more));
  }

  /** Whether the written name may be taken for a misspelling of this one. */
  public boolean isMisspelling() {
    return beside == null
        && !differences.isEmpty()
        && differences.size() <= MOST_SLIPS
        && differences.stream().allMatch(difference -> difference.kind().slip());
  }

  /** Why it is a candidate, in words. */
  public String reason() {
    String alike =
        differences.isEmpty()
            ? score > 0 ? "the same name" : "as an earlier file was read"
            : differences.stream().map(NameDifference::sentence).collect(Collectors.joining("; "));
    if (beside == null) {
      return alike;
    }
    String more = beside.more() == 0 ? "" : " and in " + beside.more() + " more";
    return alike + "; but both stood in test " + beside.test() + more;
  }
}
