package org.griplore.store.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.griplore.store.vocabulary.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhraseBookTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "from ft to m|unit-changed",
        "mean of 6 runs (time), CV 0.42 %|mean-of-runs-cv",
        "mean of 6 runs (time), CV 0.42 %; 1 left out|mean-of-runs-cv-left-out",
        "valid|valid",
        "taken as Velmora Aurelis 5 (97 % alike in letters)|taken-as-model",
      })
  void wordsHaveTheirCodeAndComeBackAsTheyWere(String words, String code) {
    Phrase phrase = PhraseBook.phrase(words);
    assertThat(PhraseBook.words(phrase)).isEqualTo(words);
    if (PhraseBook.codes().contains(code)) {
      assertThat(phrase.code()).isEqualTo(code);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "{}", "run ", "from  to ", "told", "And more changes.", "a\nb", "$1 \\E"})
  void anyWordsComeBackAsTheyWere(String words) {
    assertThat(PhraseBook.words(PhraseBook.phrase(words))).isEqualTo(words);
    assertThat(PhraseBook.words(PhraseBook.phrases(words))).isEqualTo(words);
  }

  @Test
  void everyCodeIsFoundAgainByItsOwnWords() {
    for (String code : PhraseBook.codes()) {
      Phrase filled = null;
      for (int gaps = 0; gaps < 7 && filled == null; gaps++) {
        Phrase tried =
            new Phrase(code, List.of("1", "2", "3", "4", "5", "6", "7").subList(0, gaps));
        String unknown = (code + " " + String.join(", ", tried.parameters())).strip();
        filled = PhraseBook.words(tried).equals(unknown) && !code.equals(unknown) ? null : tried;
      }
      assertThat(filled).as(code).isNotNull();
      assertThat(PhraseBook.words(PhraseBook.phrase(PhraseBook.words(filled))))
          .isEqualTo(PhraseBook.words(filled));
    }
  }

  @Test
  void aCodeOfANewerProgramIsShownWithItsParameters() {
    assertThat(PhraseBook.words(Phrase.of("not-yet", "a", "b"))).isEqualTo("not-yet a, b");
  }
}
