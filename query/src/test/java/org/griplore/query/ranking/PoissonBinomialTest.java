package org.griplore.query.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Random;
import org.griplore.query.statistics.ReferenceCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PoissonBinomialTest {
  private static final ReferenceCase RATIONALS = ReferenceCase.carried("poisson-binomial");
  private static final MathContext DIGITS = new MathContext(40);

  /** Figures by exact rational arithmetic, rounded once. */
  @Test
  void everyFigureAgreesWithExactRationals() {
    int checked = 0;
    for (ReferenceCase.Expected e : RATIONALS.expected()) {
      int[] fields =
          RATIONALS.data().stream()
              .filter(row -> row.get("set").equals(e.key1()))
              .mapToInt(row -> Integer.parseInt(row.get("field")))
              .toArray();
      PoissonBinomial top3 = PoissonBinomial.ofFields(fields, 3);
      int k = e.key2().isEmpty() ? -1 : Integer.parseInt(e.key2());
      double actual =
          switch (e.quantity()) {
            case "pmf" -> top3.exactly(k);
            case "P(X>=k)" -> top3.atLeast(k);
            case "P(X<=k)" -> top3.atMost(k);
            case "mid-P upper" -> top3.midAtLeast(k);
            case "mean" -> top3.mean();
            case "variance" -> top3.variance();
            default -> throw new AssertionError(e.quantity());
          };
      assertRelative(e.toString(), actual, e.value(), 1e-13);
      if (e.quantity().equals("P(X>=k)")) {
        double[] chances = new double[fields.length];
        for (int i = 0; i < fields.length; i++) {
          chances[i] = TopShare.chance(fields[i], 3);
        }
        assertRelative(e.toString(), PoissonBinomial.atLeast(chances, k), e.value(), 1e-13);
      }
      checked++;
    }
    assertThat(checked).isEqualTo(282);
  }

  /** 5,000 tests with a field of eight: the binomial, by integer arithmetic. */
  @Test
  void fiveThousandTestsKeepTheirTailsToTwelveDigits() {
    int n = 5000;
    BigInteger[] ways = new BigInteger[n + 1];
    BigInteger term = BigInteger.valueOf(5).pow(n);
    for (int k = 0; k <= n; k++) {
      ways[k] = term;
      term =
          term.multiply(BigInteger.valueOf(3L * (n - k))).divide(BigInteger.valueOf(5L * (k + 1)));
    }
    BigInteger[] atLeast = new BigInteger[n + 1];
    BigInteger sum = BigInteger.ZERO;
    for (int k = n; k >= 0; k--) {
      sum = sum.add(ways[k]);
      atLeast[k] = sum;
    }
    assertThat(sum.equals(BigInteger.TWO.pow(3 * n))).isTrue();
    double[] chances = new double[n];
    Arrays.fill(chances, 3.0 / 8);
    PoissonBinomial tests = PoissonBinomial.of(chances);
    for (int k = 0; k <= n; k++) {
      assertThat(tests.exactly(k)).isBetween(0.0, 1.0);
    }
    for (int k = 0; k <= n; k += 25) {
      int shift = Math.max(0, atLeast[k].bitLength() - 900);
      double exact = Math.scalb(atLeast[k].shiftRight(shift).doubleValue(), shift - 3 * n);
      if (exact > 1e-285) {
        assertRelative("P(X>=" + k + ")", tests.atLeast(k), exact, 1e-12);
        if (k % 250 == 0) {
          assertRelative("capped " + k, PoissonBinomial.atLeast(chances, k), exact, 1e-12);
        }
      } else {
        assertThat(tests.atLeast(k)).isBetween(0.0, 1e-284);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void unequalChancesAgreeWithFortyDigitArithmetic(long seed) {
    Random random = new Random(seed);
    double[] chances = random.doubles(120).map(u -> u * u).toArray();
    chances[3] = 0;
    chances[50] = 1;
    BigDecimal[] exact = {BigDecimal.ONE};
    for (double chance : chances) {
      BigDecimal p = new BigDecimal(chance);
      BigDecimal q = BigDecimal.ONE.subtract(p);
      BigDecimal[] next = new BigDecimal[exact.length + 1];
      for (int k = 0; k < next.length; k++) {
        BigDecimal stay = k < exact.length ? exact[k].multiply(q, DIGITS) : BigDecimal.ZERO;
        BigDecimal rise = k > 0 ? exact[k - 1].multiply(p, DIGITS) : BigDecimal.ZERO;
        next[k] = stay.add(rise, DIGITS);
      }
      exact = next;
    }
    PoissonBinomial counted = PoissonBinomial.of(chances);
    BigDecimal tail = BigDecimal.ZERO;
    for (int k = chances.length; k >= 0; k--) {
      tail = tail.add(exact[k], DIGITS);
      assertRelative("P(" + k + ")", counted.exactly(k), exact[k].doubleValue(), 1e-12);
      assertRelative("P(>=" + k + ")", counted.atLeast(k), tail.doubleValue(), 1e-12);
      assertRelative("capped " + k, PoissonBinomial.atLeast(chances, k), tail.doubleValue(), 1e-12);
    }
    assertThat(counted.atLeast(1)).isEqualTo(1);
  }

  @Test
  void noEventsAndCountsOutOfReach() {
    PoissonBinomial none = PoissonBinomial.of(new double[0]);
    assertThat(none.exactly(0)).isEqualTo(1);
    assertThat(none.atLeast(0)).isEqualTo(1);
    assertThat(none.atLeast(1)).isZero();
    assertThat(none.atMost(0)).isEqualTo(1);
    assertThat(none.atMost(-1)).isZero();
    assertThat(PoissonBinomial.atLeast(new double[] {0.5}, 2)).isZero();
    assertThat(PoissonBinomial.of(new double[] {0.5}).exactly(-1)).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> PoissonBinomial.of(new double[] {1.1}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PoissonBinomial.of(new double[] {Double.NaN}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PoissonBinomial.ofFields(new int[] {0}, 3));
  }
}
