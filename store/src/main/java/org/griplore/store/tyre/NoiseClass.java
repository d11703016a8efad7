package org.griplore.store.tyre;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * The label class of external rolling noise, Regulation (EU) 2020/740, annex I part C: A at 3 dB or
 * more below the limit value, B up to the limit, C above it; Regulation (EC) 1222/2009 showed the
 * same edges as one, two and three sound waves. From memory, check the official text.
 *
 * <p>The class is relative to the limit for the tyre's own width, so two tyres of one class may
 * differ by several dB: rank by dB, never by class.
 *
 * @param rank 0 for A or one wave, 1 for B or two, 2 for C or three
 * @param era the label's edition
 */
public record NoiseClass(int rank, LabelEra era) {
  /** Checks the place. */
  public NoiseClass {
    if (rank < 0 || rank > 2) {
      throw new IllegalArgumentException("a noise class is 0, 1 or 2: " + rank);
    }
  }

  /**
   * The class of a declared value.
   *
   * @param declared N, whole dB(A)
   * @param limit LV for the tyre, dB(A) (see {@link NoiseLimit})
   */
  public static NoiseClass of(int declared, int limit, LabelEra era) {
    int over = declared - limit;
    return new NoiseClass(over <= -3 ? 0 : over <= 0 ? 1 : 2, era);
  }

  /**
   * The value to declare: 1 dB(A) is taken off for the measuring tolerance (from memory, check the
   * official text), and the rest is rounded down to the whole dB.
   *
   * @param measured level in dB(A) at the reference speed, after temperature correction
   */
  public static int declared(double measured) {
    if (!(measured > 0) || measured > 200) {
      throw new Refusal(
          "A sound level is above 0 and at most 200 dB(A); found " + measured,
          new Problem("exterior noise", Double.toString(measured), "a level in dB(A)"));
    }
    return BigDecimal.valueOf(measured)
        .subtract(BigDecimal.ONE)
        .setScale(0, RoundingMode.FLOOR)
        .intValueExact();
  }

  /** As the label shows it: {@code A}, {@code B}, {@code C}, or the number of waves. */
  public String symbol() {
    return era == LabelEra.ERA_2021
        ? String.valueOf((char) ('A' + rank))
        : rank == 0 ? "1 wave" : rank + 1 + " waves";
  }
}
