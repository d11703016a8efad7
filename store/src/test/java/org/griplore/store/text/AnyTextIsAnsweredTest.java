package org.griplore.store.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.SourceKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnyTextIsAnsweredTest {
  @TempDir Path folder;
  private Archive archive;
  private NoteIndex index;

  @BeforeEach
  void open() {
    archive = Archive.openOrCreate(folder);
    Notes.in("a.md")
        .test(
            "T1",
            "Wet day",
            "2020",
            null,
            SourceKind.OWN,
            "||Stops short in the wet.",
            "||Floats in deep water.")
        .addTo(archive);
    index = NoteIndex.open(archive);
  }

  @AfterEach
  void close() {
    index.close();
    archive.close();
  }

  static Stream<String> oddTexts() {
    return Stream.of(
        "",
        "   ",
        "\"",
        "\"\"",
        "-",
        "--",
        "*",
        "***",
        "* * *",
        "+ - && || ! ( ) { } [ ] ^ ~ ? : \\ /",
        "\u0000\u0001",
        "\ud83d\ude00",
        "\ud800",
        "NOT",
        "\u201e\u201c",
        "-\"");
  }

  @ParameterizedTest(name = "[{index}]")
  @MethodSource("oddTexts")
  void aTextWithoutWordsListsTheNewestNotesAndSaysSo(String text) {
    NoteHits hits = index.search(NoteQuery.of(text));
    if (!text.equals("NOT")) {
      assertThat(hits.hits()).hasSize(2);
      assertThat(hits.how().remarks())
          .contains("No words were looked for: the newest notes come first.");
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "\"stops short", "stops short\"", "stops~ short^2", "(stops short", "field:stops short",
        "stops short AND", "[stops TO short]", "/stops/ short", "stops\\ short", "stops && short"
      })
  void anUnbalancedOrForeignSyntaxIsReadAsPlainWords(String text) {
    assertThat(index.search(NoteQuery.of(text)).hits())
        .first()
        .extracting(NoteHit::text)
        .isEqualTo("Stops short in the wet.");
  }

  @Test
  void aQuoteWithoutPartnerIsTold() {
    assertThat(index.search(NoteQuery.of("stops \"short")).how().sentences())
        .containsExactly("A quotation mark without its partner was ignored.");
  }

  @Test
  void tooManyWordsAreCutAndTold() {
    NoteHits hits = index.search(NoteQuery.of("wet ".repeat(10_000)));
    assertThat(hits.hits()).hasSize(2);
    assertThat(hits.how().sentences())
        .containsExactly(
            "The text is very long: what comes after 10000 characters was ignored.",
            "Only the first 32 words were looked for; the rest was ignored.");
    assertThat(index.search(NoteQuery.of("x".repeat(1_000_000))).hits()).isEmpty();
    assertThat(index.search(NoteQuery.of("a* b* d* w* s* ".repeat(50))).hits()).isNotEmpty();
  }

  @Test
  void onlyExclusionsLeaveTheOthers() {
    assertThat(index.search(NoteQuery.of("-wet -short")).hits()).isEmpty();
    assertThat(index.search(NoteQuery.of("-short")).hits())
        .singleElement()
        .extracting(NoteHit::text)
        .isEqualTo("Floats in deep water.");
  }

  @Test
  void whenNoNoteHasAllWordsThoseWithSomeAreGivenAndToldSo() {
    NoteHits hits = index.search(NoteQuery.of("short deep"));
    assertThat(hits.hits()).hasSize(2);
    assertThat(hits.how().remarks())
        .containsExactly("No note has enough of the words: these have at least one of them.");
    assertThat(index.counts(NoteQuery.of("short deep")).total()).isEqualTo(2);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void noiseNeverThrows(long seed) {
    Random random = new Random(seed);
    String alphabet = "ab wet\"\"--**()~^:\\/[]{}+!&|?\u00e4\u4e2d\ud83d\t\n'.,;0123%";
    for (int i = 0; i < 300; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(40); length > 0; length--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      NoteQuery query = NoteQuery.of(text.toString());
      long counted = index.counts(query).total();
      assertThat(index.search(query).hits()).hasSize((int) counted);
    }
  }
}
