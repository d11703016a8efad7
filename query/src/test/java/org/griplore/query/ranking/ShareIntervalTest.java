package org.griplore.query.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.griplore.query.statistics.Closeness.assertPrinted;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.OptionalDouble;
import org.griplore.query.statistics.ReferenceCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Newcombe 1998, Stat Med 17:857, table I, and full-precision figures of general packages (closed
 * form; beta quantiles).
 */
class ShareIntervalTest {
  private static final ReferenceCase NEWCOMBE = ReferenceCase.carried("newcombe-1998");

  @Test
  void allIntervalsAgreeWithGeneralPackages() {
    int checked = 0;
    for (ReferenceCase.Expected e : NEWCOMBE.expected()) {
      OptionalDouble actual = figure(e.quantity(), e.key1(), Double.parseDouble(e.key2()));
      if (actual.isPresent()) {
        // The package's rounding leaves 1e-17 where none of the tests count; the interval ends at
        // 0.
        double expected = e.value() < 1e-15 ? 0 : e.value();
        assertRelative(e.toString(), actual.getAsDouble(), expected, 1e-8);
        checked++;
      }
    }
    assertThat(checked).isGreaterThanOrEqualTo(10 * 3 * 6);
  }

  @Test
  void printedIntervalsAreReachedToTheirDigits() {
    for (ReferenceCase.Expected e : NEWCOMBE.published()) {
      double actual = figure(e.quantity(), e.key1(), Double.parseDouble(e.key2())).orElseThrow();
      assertPrinted(e.toString(), actual, e.value(), e.decimals());
    }
  }

  private static OptionalDouble figure(String quantity, String share, double level) {
    String[] parts = share.split("/");
    int x = Integer.parseInt(parts[0]);
    int n = Integer.parseInt(parts[1]);
    return switch (quantity) {
      case "wilson.lb" -> OptionalDouble.of(WilsonInterval.of(x, n, level).low());
      case "wilson.ub" -> OptionalDouble.of(WilsonInterval.of(x, n, level).high());
      case "clopper.pearson.lb" -> OptionalDouble.of(ClopperPearsonInterval.of(x, n, level).low());
      case "clopper.pearson.ub" -> OptionalDouble.of(ClopperPearsonInterval.of(x, n, level).high());
      case "jeffreys.lb.BCD" -> OptionalDouble.of(JeffreysInterval.of(x, n, level).low());
      case "jeffreys.ub.BCD" -> OptionalDouble.of(JeffreysInterval.of(x, n, level).high());
      case "jeffreys.lb.plain", "jeffreys.ub.plain" -> OptionalDouble.empty();
      default -> throw new AssertionError(quantity);
    };
  }

  @Test
  void noneAndAllEndAtExactlyNoughtAndOne() {
    for (int n = 1; n < 2000; n += 7) {
      assertThat(WilsonInterval.of(0, n, 0.95).low()).isZero();
      assertThat(WilsonInterval.of(n, n, 0.95).high()).isEqualTo(1);
      assertThat(WilsonInterval.of(n, n, 0.95).low()).isLessThan(1);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 0.95", "-1, 5, 0.95", "6, 5, 0.95", "1, 5, 0", "1, 5, 1", "1, 5, NaN"})
  void impossibleSharesAreRefused(int x, int n, double level) {
    assertThatIllegalArgumentException().isThrownBy(() -> WilsonInterval.of(x, n, level));
    assertThatIllegalArgumentException().isThrownBy(() -> JeffreysInterval.of(x, n, level));
    assertThatIllegalArgumentException().isThrownBy(() -> ClopperPearsonInterval.of(x, n, level));
  }
}
