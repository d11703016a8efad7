package org.griplore.store.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {
  /**
   * International yard and pound agreement of 1959: 1 yd = 0.9144 m, 1 lb = 0.453 592 37 kg, both
   * exact; foot, inch and mile follow. Standard gravity: 3rd CGPM 1901, 9.806 65 m/s2, exact.
   */
  @ParameterizedTest(name = "{0} {1} = {2} {3}")
  @CsvSource({
    "1,yd,0.9144,m",
    "1,ft,0.3048,m",
    "1,in,25.4,mm",
    "1,mi,1.609344,km",
    "1,mi,5280,ft",
    "1,lb,0.45359237,kg",
    "1,lb,453.59237,gram",
    "1,lbf,4.4482216152605,N",
    "1,g,9.80665,m/s2",
    "60,mph,96.56064,km/h",
    "60,mph,26.8224,m/s",
    "100,km/h,27.77777777777778,m/s",
    "1,min,60,s",
    "9.0,N/kN,9.0,kg/t",
    "0.009,coefficient,9.0,N/kN",
    "100,Wh/km,10,kWh/100 km",
    "16.09344,kWh/100 mi,10,kWh/100 km",
    "100,°C,212,°F",
    "-40,°F,-40,°C"
  })
  void factorIsExact(double value, String from, double expected, String to) {
    Unit source = Unit.ofSymbol(from).orElseThrow();
    Unit target = Unit.ofSymbol(to).orElseThrow();
    assertThat(source.convert(value, target))
        .isCloseTo(expected, within(1e-12 * Math.abs(expected)));
  }

  @ParameterizedTest(name = "seed {0}: there and back is the same")
  @ValueSource(longs = {1, 2, 3})
  void convertingBackGivesTheValue(long seed) {
    Random random = new Random(seed);
    for (Unit from : Unit.values()) {
      for (Unit to : Unit.values()) {
        if (from.convertsTo(to) && to.convertsTo(from)) {
          double value = random.nextDouble() * 200 - 100;
          assertThat(to.convert(from.convert(value, to), from))
              .as("%s to %s", from, to)
              .isCloseTo(value, within(1e-10));
        }
      }
    }
  }

  @Test
  void nothingConvertsAcrossKindsOrCurrencies() {
    assertThatThrownBy(() -> Unit.METRE.convert(1, Unit.SECOND))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Unit.EURO.convert(1, Unit.KRONA))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Unit.SCHOOL_MARK.convert(1, Unit.POINTS_10))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Unit.PERCENT_OF_BEST.convert(1, Unit.PERCENT_OF_REFERENCE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
