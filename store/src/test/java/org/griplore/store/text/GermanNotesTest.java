package org.griplore.store.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.SourceKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GermanNotesTest {
  @TempDir Path folder;
  private Archive archive;
  private NoteIndex index;

  @BeforeEach
  void open() {
    archive = Archive.openOrCreate(folder);
    Notes.in("a.md")
        .test(
            "T1",
            "Tag",
            "2020",
            null,
            SourceKind.OWN,
            "||Auf nasser Fahrbahn etwas zögerlich, bei Kurvenfahrten mit spätem Übersteuern.",
            "||Die Reifen poltern laut über Fugen; ruhige Geradeausläufe.",
            "||In the long bends it drifts early; quiet over joints.")
        .addTo(archive);
    index = NoteIndex.open(archive);
  }

  @AfterEach
  void close() {
    index.close();
    archive.close();
  }

  @ParameterizedTest(name = "{0} finds {1}")
  @CsvSource({
    "zögerliche, Auf",
    "ZOGERLICH, Auf",
    "Fahrbahnen, Auf",
    "spät, Auf",
    "Kurvenfahrt, Auf",
    "oversteer, Auf",
    "wet, Auf",
    "nass, Auf",
    "Fuge, Die",
    "poltert, Die",
    "ruhig, Die",
    "Geradeauslauf, Die",
    "tire loud, Die",
    "drifting, In ",
  })
  void wordsAreFoundWithoutTheirEndings(String word, String beginning) {
    NoteHits hits = index.search(NoteQuery.of(word));
    assertThat(hits.hits())
        .singleElement()
        .extracting(hit -> hit.text().substring(0, 3).strip())
        .isEqualTo(beginning);
    assertThat(hits.how().sentences()).isEmpty();
  }

  @Test
  void aHitIsMarkedAsItIsWritten() {
    assertThat(index.search(NoteQuery.of("nass")).hits().get(0).snippet().pieces())
        .contains(new Snippet.Piece("nasser", true));
    assertThat(index.search(NoteQuery.of("zögerlicher")).hits().get(0).snippet().pieces())
        .contains(new Snippet.Piece("zögerlich", true));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Auf Schnee gut, true",
    "Bremst kurz und sauber, true",
    "Träge, true",
    "Stops short and clean in the wet, false",
    "So good that I am tired of it; the edges die early, false",
    "'', false"
  })
  void aTextsLanguageIsKnownByItsSmallWords(String text, boolean german) {
    assertThat(NoteAnalysis.isGerman(text)).isEqualTo(german);
  }
}
