package org.griplore.ingest.recognise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ways of writing numbers: common practice, no source. */
class NumberReaderTest {
  private static final NumberReader NUMBERS = new NumberReader(DecimalMark.OPEN);

  @ParameterizedTest(name = "{0} is {1} {2}, beside it \"{3}\"")
  @CsvSource(
      delimiter = '|',
      emptyValue = "",
      value = {
        ".25 | 0.25 | '' | ''",
        ",25 | 0.25 | '' | ''",
        "-.5 | -0.5 | '' | ''",
        "1.23,45 | 83.45 | s | ''",
        "1:23,45 | 83.45 | s | ''",
        "1'23\"45 | 83.45 | s | ''",
        "1 min 23.4 s | 83.4 | s | ''",
        "2:05 min | 125 | s | ''",
        "79,- | 79 | '' | ''",
        "112.- | 112 | '' | ''",
        "112,- € | 112 | EUR | ''",
        "28,4 m (3) | 28.4 | m | 3",
        "41,7* | 41.7 | '' | ''",
        "befr. (3,2) | 3.2 | '' | ''",
        "36.5 ± 0.4 | 36.5 | '' | ±0.4",
        "36,5 +/- 0,4 m | 36.5 | m | ±0,4",
        "1.480,5 | 1480.5 | '' | ''",
        "1 480 | 1480 | '' | ''",
        "３６．５ | 36.5 | '' | ''",
      })
  void isRead(String text, double value, String unit, String aside) {
    NumberReader.Reading.Number number = (NumberReader.Reading.Number) NUMBERS.read(text);
    assertThat(number.value()).isCloseTo(value, within(1e-9));
    assertThat(number.unit().map(UnitName::of).orElse("")).isEqualTo(unit);
    assertThat(number.aside()).isEqualTo(aside);
  }

  private static final class UnitName {
    static String of(org.griplore.store.vocabulary.UnitWords.Recognised unit) {
      Unit found = unit.unit();
      return found.symbol();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2+",
        "++",
        ">90",
        "< 72 dB",
        "35-37",
        "35,2–36,1",
        "A",
        "★★★",
        "12.34.5",
        "1.23.45.67",
        "abc",
        "ca. 35 m",
        "36.5 (",
        "1,23.45,6"
      })
  void isNoFigure(String text) {
    assertThat(NUMBERS.read(text)).isInstanceOf(NumberReader.Reading.NotNumber.class);
  }
}
