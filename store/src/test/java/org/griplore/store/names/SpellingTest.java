package org.griplore.store.names;

import static org.assertj.core.api.Assertions.assertThat;

import org.griplore.store.names.NameDifference.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words and how they differ; all names are invented. */
class SpellingTest {
  /** Counted by hand; "ab" to "ba" is one swap, as Damerau (1964) counts. */
  @ParameterizedTest(name = "{0} is {2} from the beginning of {1}")
  @CsvSource({
    "velmroa, velmora, 1",
    "velmora, velmora, 0",
    "velm, velmora, 0",
    "velmm, velmora, 1",
    "evlmora, velmora, 1",
    "elmora, velmora, 1",
    "vvelmora, velmora, 1",
    "xelmory, velmora, 2"
  })
  void distances(String typed, String word, int letters) {
    assertThat(Spelling.distanceToBeginning(typed, word, 2)).isEqualTo(letters);
  }

  /** Counted by hand, as Damerau (1964) counts. */
  @ParameterizedTest(name = "{0} is {2} from {1}")
  @CsvSource({
    "aurelis, aurelis, 0",
    "aureils, aurelis, 1",
    "aurelys, aurelis, 1",
    "aurlis, aurelis, 1",
    "aurelissa, aurelis, 2",
    "tutano, tuttanno, 2",
    "aurelis, omnivar, 3"
  })
  void distancesOfWholeWords(String some, String other, int letters) {
    assertThat(Spelling.distance(some, other, 2)).isEqualTo(letters);
    assertThat(Spelling.distance(other, some, 2)).isEqualTo(letters);
  }

  @ParameterizedTest(name = "{0} beside {1} is {2}")
  @CsvSource(
      nullValues = "-",
      value = {
        "aureils, aurelis, SWAPPED",
        "tarvionn, tarvion, DOUBLED",
        "tutano, tuttanno, DOUBLED",
        "aureliss, aurelis, EDGE_LETTER",
        "aurelis, aureliss, EDGE_LETTER",
        "aurlis, aurelis, LETTER_COUNT",
        "aurelis, aurelisa, EDGE_LETTER",
        "eaurelis, aurelis, EDGE_LETTER",
        "sport, sports, EDGE_LETTER",
        "aurelys, aurelis, LIKE_LETTER",
        "ferwaro, fervaro, LIKE_LETTER",
        "vejgrip, vejgrib, EDGE_LETTER",
        "vintaro, pintaro, EDGE_LETTER",
        "corsant, corvant, OTHER_LETTER",
        "phervaro, fervaro, TWO_LETTERS",
        "korvant, corvant, EDGE_LETTER",
        "rirnefell, rimefell, SAME_SOUND",
        "quillarn, kwillarn, TWO_LETTERS",
        "evo, neo, -",
        "xls, xl, -",
        "rsx, rs, -",
        "snow, show, OTHER_LETTER",
        "corvant, givralle, -",
        "12, 11, -"
      })
  void whatSetsTwoWordsApart(String written, String known, Kind kind) {
    assertThat(Spelling.difference(written, known, false)).isEqualTo(kind);
  }

  @Test
  void aLastLetterTwiceIsAMarkWhereTheNameEnds() {
    assertThat(Spelling.difference("tarvionn", "tarvion", true)).isEqualTo(Kind.EDGE_LETTER);
    assertThat(Spelling.difference("tarvvion", "tarvion", true)).isEqualTo(Kind.DOUBLED);
  }
}
