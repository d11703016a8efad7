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
              .filter(line -> !line.startsWith("#"))
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
        .as(
            () ->
                CATALOGUE.candidates(header).stream()
                    .map(m -> m.words() + m.discipline().key())
                    .toList()
                    .toString())
        .isEqualTo(key);
  }

  @Test
  void defaultLocaleDoesNotMatter() {
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
  void matchTellsWordsAndLanguage() {
    DisciplineCatalogue.Match match =
        CATALOGUE.byHeader("Bremsweg auf nasser Fahrbahn (m)").orElseThrow();
    assertThat(match.words()).isEqualTo("bremsweg nasser");
    assertThat(match.language()).isEqualTo("de");
  }

  @Test
  void sharedWordsGiveEveryCandidate() {
    assertThat(CATALOGUE.candidates("Noise"))
        .extracting(match -> match.discipline().key())
        .containsExactly("exterior-noise", "interior-noise");
  }

  @Test
  void everyDisciplineHasPhrasesInFourLanguages() {
    for (Discipline discipline : CATALOGUE.all()) {
      assertThat(discipline.headerWords().keySet())
          .as(discipline.key())
          .contains("en", "de", "fr", "sv");
      assertThat(discipline.headerWords().values()).noneMatch(List::isEmpty);
    }
  }

  @Test
  void keyMeetsSpellings() {
    assertThat(HeaderKey.of("  Außengeräusch [dB(A)]:")).isEqualTo("aussengerausch");
    assertThat(HeaderKey.of("AUSSENGERAEUSCH")).isEqualTo("aussengerausch");
    assertThat(HeaderKey.of("Distance d’arrêt (m)")).isEqualTo("distance d arret");
    assertThat(HeaderKey.of("Braking (wet)")).isEqualTo("braking wet");
    assertThat(HeaderKey.of("(m)")).isEmpty();
  }
}
