package org.griplore.store.tyre;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The classes of one label row as printed: letters from best to worst, each with the last value
 * that belongs to it; the worst has none. Letters that a row leaves empty are not listed.
 */
final class LabelScale {
  /** One class; {@code last} is null for the open worst class. */
  private record Step(String letter, BigDecimal last) {}

  private final List<Step> steps;
  private final int decimals;
  private final boolean lowIsBest;

  private LabelScale(List<Step> steps, int decimals, boolean lowIsBest) {
    this.steps = steps;
    this.decimals = decimals;
    this.lowIsBest = lowIsBest;
  }

  /**
   * Reads {@code A 6.5 B 7.7 ... E}: letter and last value in turn.
   *
   * @param decimals decimals to which a value is rounded before it is classed
   */
  static LabelScale of(String row, int decimals, boolean lowIsBest) {
    String[] words = row.split(" ");
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < words.length; i += 2) {
      steps.add(new Step(words[i], i + 1 < words.length ? new BigDecimal(words[i + 1]) : null));
    }
    return new LabelScale(List.copyOf(steps), decimals, lowIsBest);
  }

  /** The value rounded as the row's bounds are; halves go up (ISO 80000-1, annex B, rule B). */
  BigDecimal rounded(BigDecimal value) {
    return value.setScale(decimals, RoundingMode.HALF_UP);
  }

  String letter(BigDecimal value) {
    BigDecimal rounded = rounded(value);
    for (Step step : steps) {
      if (step.last() == null || reaches(rounded, step.last())) {
        return step.letter();
      }
    }
    throw new IllegalStateException("the last class of a label row is open");
  }

  private boolean reaches(BigDecimal value, BigDecimal last) {
    return lowIsBest ? value.compareTo(last) <= 0 : value.compareTo(last) >= 0;
  }

  /** The last value that belongs to a letter; empty for the open worst class. */
  Optional<BigDecimal> last(String letter) {
    return Optional.ofNullable(steps.get(place(letter)).last());
  }

  /** 0 for the best class; -1 for a letter that the row does not have. */
  int place(String letter) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).letter().equals(letter)) {
        return i;
      }
    }
    return -1;
  }

  List<String> letters() {
    return steps.stream().map(Step::letter).toList();
  }
}
