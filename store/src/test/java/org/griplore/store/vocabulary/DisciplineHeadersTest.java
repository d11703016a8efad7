package org.griplore.store.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Headers as people write them in four languages; the list is a resource, a line a case. */
class DisciplineHeadersTest {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();

  static Stream<Arguments> headers() throws IOException {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                DisciplineHeadersTest.class.getResourceAsStream("headers.txt"),
                StandardCharsets.UTF_8))) {
      List<Arguments> all =
          lines
              .lines()
              .filter(line -> !line.startsWith("#") && !line.isBlank())
              .map(line -> line.split("\\|"))
              .map(parts -> Arguments.of(parts[0].strip(), parts[1].strip()))
              .toList();
      return all.stream();
    }
  }

  @ParameterizedTest(name = "{0} is {1}")
  @MethodSource("headers")
  void headerIsRecognised(String header, String key) {
    assertThat(CATALOGUE.byHeader(header).map(match -> match.discipline().key()).orElse("-"))
        .isEqualTo(key);
  }

  @Test
  void theDefaultLocaleDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(CATALOGUE.byHeader("PRICE")).isPresent();
      assertThat(CATALOGUE.byHeader("ICE BRAKING")).isPresent();
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyDisciplineHasWordsInFourLanguages() {
    for (Discipline discipline : CATALOGUE.all()) {
      assertThat(discipline.headerWords().keySet())
          .as(discipline.key())
          .containsExactlyInAnyOrder("en", "de", "fr", "sv");
      assertThat(discipline.headerWords().values()).noneMatch(List::isEmpty);
    }
  }

  @Test
  void aSpellingIsOneKey() {
    assertThat(HeaderKey.of("  Außengeräusch [dB(A)]:")).isEqualTo(HeaderKey.of("AUSSENGERAEUSCH"));
    assertThat(HeaderKey.of("Distance d’arrêt (m)")).isEqualTo("distance d arret");
    assertThat(HeaderKey.of("(m)")).isEmpty();
  }
}
