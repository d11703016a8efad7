package org.griplore.store.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoteIndexTest {
  @TempDir Path folder;
  private Archive archive;
  private NoteIndex index;

  @BeforeEach
  void open() {
    archive = Archive.openOrCreate(folder);
    Notes.in("a.md")
        .test(
            "W21",
            "Wet day in May",
            "2021-05-04",
            "205/55 R16 91V",
            SourceKind.OWN,
            "Velmar Ostra 4|wet-braking|Stops short in the wet. Floats late, little aquaplaning.",
            "Velmar Ostra 3|wet-braking|The tires squeal over the curb; braking is average.",
            "Brannick Tal 2|straight-aquaplaning|Gives up early in deep water.",
            "||Track dried towards noon, the last sets had more grip.")
        .test(
            "S19",
            "Schneetag",
            "2019-02",
            "225/45R17 94V XL",
            SourceKind.INDEPENDENT,
            "Velmar Ostra 3||Beim Nassbremsen gut, auf Schnee träge; Geräusche störend.",
            "Brannick Tal 2|comfort|Harsh over joints, yet the straight line is quiet.")
        .addTo(archive);
    index = NoteIndex.open(archive);
  }

  @AfterEach
  void close() {
    index.close();
    archive.close();
  }

  private List<String> found(String text) {
    return index.search(NoteQuery.of(text)).hits().stream()
        .map(hit -> hit.text().substring(0, 5).replace("m ", "m_"))
        .toList();
  }

  @ParameterizedTest(name = "{0} finds {1}")
  @CsvSource({
    "tyre, The t",
    "tires kerb, The t",
    "hydroplaning, Stops Gives",
    "brake average, The t",
    "HARSH, Harsh",
    "harshness, Harsh",
    "Geräusch, Beim_",
    "gerausche, Beim_",
    "geraeusche, Beim_",
    "noise, Beim_",
    "träge, Beim_",
    "trage schneetag, Beim_",
    "nassbremsen schnee, Beim_",
    "wet braking snow trage, Beim_",
    "'\"deep water\"', Gives",
    "'\"water deep\"', ''",
    "'\"in the wet\"', Stops",
    "squea*, The t",
    "ostra squeal, The t",
    "water -deep, ''",
    "grip noon, Track",
  })
  void wordsFindNotes(String text, String beginnings) {
    assertThat(String.join(" ", found(text))).isEqualTo(beginnings);
  }

  @Test
  void aHitTellsWhereItStands() {
    NoteHit hit = index.search(NoteQuery.of("squeal")).hits().get(0);
    assertThat(hit.test()).isEqualTo("W21");
    assertThat(hit.title()).isEqualTo("Wet day in May");
    assertThat(hit.date()).isEqualTo(new TestDate("2021-05-04"));
    assertThat(hit.model()).isEqualTo("Velmar Ostra 3");
    assertThat(hit.discipline()).isEqualTo("wet-braking");
    assertThat(hit.size()).isEqualTo("205/55 R16 91V");
    assertThat(hit.source()).isEqualTo(SourceKind.OWN);
    assertThat(hit.file()).isEqualTo("a.md");
    assertThat(hit.report()).isEqualTo(1);
    assertThat(hit.cell()).isEqualTo(new Cell("Notes", 3, 4, hit.text()));
    assertThat(hit.snippet().pieces())
        .containsExactly(
            new Snippet.Piece("The tires ", false),
            new Snippet.Piece("squeal", true),
            new Snippet.Piece(" over the curb; braking is average.", false));
  }

  @Test
  void aMisspeltWordIsReadAsTheNearest() {
    NoteHits hits = index.search(NoteQuery.of("aquaplanig"));
    assertThat(hits.how().respelled())
        .containsExactly(new ReadQuery.Respelling("aquaplanig", "aquaplaning"));
    assertThat(hits.hits()).extracting(NoteHit::test).contains("W21");
    assertThat(hits.how().sentences())
        .containsExactly(
            "No note has \u201caquaplanig\u201d: it was read as \u201caquaplaning\u201d.");
  }

  @Test
  void filtersLeaveNotesOut() {
    NoteFilter none = NoteFilter.NONE;
    assertThat(count(filter(Set.of("Velmar Ostra 3"), Set.of(), Set.of(), null, null)))
        .isEqualTo(2);
    assertThat(count(filter(Set.of(), Set.of("205/55 R16"), Set.of(), null, null))).isEqualTo(4);
    assertThat(count(filter(Set.of(), Set.of("205/55 R16 91V"), Set.of(), null, null)))
        .isEqualTo(4);
    assertThat(count(filter(Set.of(), Set.of(), Set.of(17), null, null))).isEqualTo(2);
    assertThat(count(filter(Set.of(), Set.of(), Set.of(), 2020, null))).isEqualTo(4);
    assertThat(count(filter(Set.of(), Set.of(), Set.of(), null, 2020))).isEqualTo(2);
    assertThat(count(none)).isEqualTo(6);
    for (String size : List.of("225/45R17", "225/45 ZR 17", "225/45 r17 94v xl")) {
      assertThat(count(filter(Set.of(), Set.of(size), Set.of(), null, null))).isEqualTo(2);
    }
    assertThat(count(filter(Set.of(), Set.of("225/45 R17 91W"), Set.of(), null, null))).isZero();
    assertThat(count(filter(Set.of(), Set.of("any"), Set.of(), null, null))).isZero();
  }

  private static NoteFilter filter(
      Set<String> models, Set<String> sizes, Set<Integer> rims, Integer from, Integer to) {
    return new NoteFilter(models, Set.of(), Set.of(), sizes, rims, Set.of(), Set.of(), from, to);
  }

  private long count(NoteFilter filter) {
    long counted = index.counts(NoteQuery.of("").within(filter)).total();
    assertThat(index.search(NoteQuery.of("").within(filter)).hits()).hasSize((int) counted);
    return counted;
  }

  @Test
  void countsAreOverAllHits() {
    NoteCounts counts = index.counts(NoteQuery.of("ostra"));
    assertThat(counts.total()).isEqualTo(4);
    assertThat(counts.models())
        .containsEntry("Velmar Ostra 3", 2)
        .containsEntry("Velmar Ostra 4", 1);
    assertThat(counts.years()).containsEntry(2021, 3).containsEntry(2019, 1);
    assertThat(counts.disciplines()).containsOnlyKeys("wet-braking");
  }
}
