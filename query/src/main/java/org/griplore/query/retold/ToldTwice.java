package org.griplore.query.retold;

import java.util.List;

/**
 * Two tests that look like one, told twice.
 *
 * @param first position of the one that counts until it is decided
 * @param second position of the other
 * @param likeness in what they are alike
 * @param models models that both have
 * @param cells figures that both have and that can be compared
 * @param alike how many of them are alike
 * @param differing the others
 */
public record ToldTwice(
    int first,
    int second,
    Likeness likeness,
    int models,
    int cells,
    int alike,
    List<DifferingCell> differing) {
  /** In what two tests are alike. */
  public enum Likeness {
    /** Most figures are equal, to the coarser rounding of the two. */
    EQUAL_FIGURES("equal figures"),
    /** Ranks are equal and figures proportional: per cent of the best beside metres, say. */
    PROPORTIONAL_FIGURES("equal ranks and proportional figures"),
    /** Somebody has decided that they are one. */
    DECIDED("decided to be one");

    private final String words;

    Likeness(String words) {
      this.words = words;
    }

    /** For sentences. */
    public String words() {
      return words;
    }
  }

  /**
   * A figure that the two tell differently.
   *
   * @param model position of the model
   * @param discipline position of the discipline
   * @param firstResult position of the result in the first test
   * @param secondResult position of the result in the second
   */
  public record DifferingCell(int model, int discipline, int firstResult, int secondResult) {}

  /** Keeps the list from changing. */
  public ToldTwice {
    differing = List.copyOf(differing);
  }
}
