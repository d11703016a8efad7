package org.griplore.store.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Names and their comparing form, from a table; the names are invented. */
class NameKeyTest {
  static List<String> cases() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("src/test/resources/names/name-keys.csv"));
    return lines.subList(1, lines.size());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void foldsAsTheTableSays(String line) {
    String[] row = line.split(";", -1);
    assertThat(NameKey.of(row[0])).as(row[2]).isEqualTo(row[1]);
    assertThat(NameKey.of(row[1])).as("folded twice").isEqualTo(row[1]);
  }

  /** What tells models apart is never folded. */
  @ParameterizedTest(name = "{0} is not {1}")
  @CsvSource({
    "Aurelis 4, Aurelis 5",
    "Aurelis IV, Aurelis 4",
    "Aurelis II, Aurelis III",
    "Tarvion 1, Tarvion 11",
    "Tarvion 1 1, Tarvion 11",
    "Trakkor S, Trakkor",
    "Trakkor+, Trakkor",
    "Trakkor Sport, Trakkor Sports",
    "ハヤリ, バヤリ"
  })
  void marksStayApart(String some, String other) {
    assertThat(NameKey.of(some)).isNotEqualTo(NameKey.of(other));
  }
}
