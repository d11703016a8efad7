package org.griplore.store.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.Lock;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NoteFeed;
import org.griplore.store.archive.NoteRecord;
import org.griplore.store.archive.ReadOnlyArchive;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.SourceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IndexFollowsArchiveTest {
  @TempDir Path folder;

  private static Notes one(String file, String test, String note) {
    return Notes.in(file).test(test, test, "2020", null, SourceKind.OWN, note);
  }

  private static long count(NoteIndex index, String text) {
    return index.counts(NoteQuery.of(text)).total();
  }

  @Test
  void additionsAndRevisionsAreSeenWithoutOpeningAnew() {
    try (Archive archive = Archive.openOrCreate(folder);
        NoteIndex index = NoteIndex.open(archive)) {
      assertThat(index.search(NoteQuery.of("howl")).hits()).isEmpty();
      one("a", "T1", "Velmar Ostra 3||Howls on rough asphalt.").addTo(archive);
      assertThat(count(index, "howl")).isEqualTo(1);
      one("a", "T1", "Velmar Ostra 3||Hums on rough asphalt.").addTo(archive);
      assertThat(count(index, "howl")).isZero();
      assertThat(count(index, "hum")).isEqualTo(1);
    }
  }

  @Test
  void anIndexInTheArchivesStateIsTakenAsItIs() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      NoteIndex.open(archive).close();
      List<String> before = files();
      NoteIndex.open(archive, (done, total) -> assertThat(total).isNegative()).close();
      assertThat(files()).isEqualTo(before);
    }
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("index"))) {
      return files.map(Path::getFileName).map(Path::toString).sorted().toList();
    }
  }

  @ParameterizedTest(name = "{0} bytes are left of every file")
  @ValueSource(ints = {0, 30, 200})
  void aDamagedIndexIsMadeAnew(int left) throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      NoteIndex.open(archive).close();
      for (String file : files()) {
        Path path = folder.resolve("index").resolve(file);
        byte[] content = Files.readAllBytes(path);
        Files.write(path, java.util.Arrays.copyOf(content, Math.min(left, content.length)));
      }
      try (NoteIndex index = NoteIndex.open(archive)) {
        assertThat(count(index, "howl")).isEqualTo(1);
      }
    }
  }

  @Test
  void missingFilesOfAnIndexAreMadeAnew() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      NoteIndex.open(archive).close();
      for (String file : files()) {
        if (!file.startsWith("segments")) {
          Files.delete(folder.resolve("index").resolve(file));
        }
      }
      try (NoteIndex index = NoteIndex.open(archive)) {
        assertThat(count(index, "howl")).isEqualTo(1);
      }
    }
  }

  @Test
  void theIndexOfAnotherArchiveIsNotTaken(@TempDir Path other) throws IOException {
    try (Archive archive = Archive.openOrCreate(other)) {
      one("b", "T9", "||Whistles.").addTo(archive);
      NoteIndex.open(archive).close();
    }
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      Files.move(other.resolve("index"), folder.resolve("index"));
      try (NoteIndex index = NoteIndex.open(archive)) {
        assertThat(count(index, "howl")).isEqualTo(1);
        assertThat(count(index, "whistle")).isZero();
      }
    }
  }

  @Test
  void aReadOnlyArchiveIsIndexedInMemoryOnlyWhereItsIndexIsStale() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
    }
    try (Archive archive = ReadOnlyArchive.open(folder);
        NoteIndex index = NoteIndex.open(archive)) {
      assertThat(count(index, "howl")).isEqualTo(1);
      assertThat(folder.resolve("index")).doesNotExist();
    }
    try (Archive archive = Archive.openOrCreate(folder)) {
      NoteIndex.open(archive).close();
    }
    List<String> before = files();
    try (Archive archive = ReadOnlyArchive.open(folder);
        NoteIndex index =
            NoteIndex.open(archive, (done, total) -> assertThat(total).isNegative())) {
      assertThat(count(index, "howl")).isEqualTo(1);
      assertThat(files()).isEqualTo(before);
    }
  }

  @Test
  void anIndexThatCannotBeKeptIsInMemory() throws IOException {
    Files.writeString(folder.resolve("index"), "a file in the folder's place");
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      try (NoteIndex index = NoteIndex.open(archive)) {
        assertThat(count(index, "howl")).isEqualTo(1);
        one("b", "T2", "||Howls too.").addTo(archive);
        assertThat(count(index, "howl")).isEqualTo(2);
      }
    }
  }

  @Test
  void anIndexThatIsDamagedWhileOpenIsMadeAnew() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      try (NoteIndex index = NoteIndex.open(archive)) {
        for (String file : files()) {
          Files.delete(folder.resolve("index").resolve(file));
        }
        one("b", "T2", "||Howls too.").addTo(archive);
        assertThat(count(index, "howl")).isEqualTo(2);
      }
    }
  }

  @Test
  void whileAnotherProgramWritesTheIndexItIsMadeInMemory() throws IOException {
    try (Archive archive = Archive.openOrCreate(folder)) {
      one("a", "T1", "||Howls.").addTo(archive);
      NoteIndex.open(archive).close();
      one("b", "T2", "||Howls too.").addTo(archive);
      List<String> before = files();
      try (FSDirectory kept = FSDirectory.open(folder.resolve("index"));
          Lock held = kept.obtainLock(IndexWriter.WRITE_LOCK_NAME);
          NoteIndex index = NoteIndex.open(archive)) {
        held.ensureValid();
        assertThat(count(index, "howl")).isEqualTo(2);
        assertThat(files()).isEqualTo(before);
      }
    }
  }

  @Test
  void othersSearchWhileItFollows() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(3);
    AtomicBoolean done = new AtomicBoolean();
    try (Archive archive = Archive.openOrCreate(folder);
        NoteIndex index = NoteIndex.open(archive)) {
      Callable<Integer> searching =
          () -> {
            int searches = 0;
            while (!done.get()) {
              NoteHits hits = index.search(NoteQuery.of("howl"));
              assertThat(hits.hits()).hasSize((int) Math.min(20, hits.total()));
              searches++;
            }
            return searches;
          };
      List<Future<Integer>> searches = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        searches.add(threads.submit(searching));
      }
      for (int i = 0; i < 15; i++) {
        one("file " + i, "T" + i, "||Howls " + i).addTo(archive);
        Thread.sleep(5);
      }
      done.set(true);
      for (Future<Integer> search : searches) {
        assertThat(search.get()).isPositive();
      }
      assertThat(count(index, "howl")).isEqualTo(15);
    } finally {
      threads.shutdownNow();
    }
  }

  private static final List<String> MODELS =
      List.of("Velmar Ostra 3", "Velmar Ostra 4", "Brannick Tal 2", "Brannick Tal", "Ostra IV");

  /** However an archive grew, its index is the one that would be made anew. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void itEndsWhereAnIndexMadeAnewWould(long seed) throws IOException {
    Random random = new Random(seed);
    try (Archive archive = Archive.openOrCreate(folder);
        NoteIndex index = NoteIndex.open(archive)) {
      for (int step = 0; step < 12; step++) {
        change(archive, random);
        if (random.nextInt(3) == 0) {
          continue;
        }
        assertThat(told(index)).containsExactlyInAnyOrderElementsOf(told(archive));
        try (NoteIndex anew = NoteIndex.open(archive)) {
          assertThat(spread(index)).isEqualTo(spread(anew));
        }
        assertThat(spread(index)).isEqualTo(spreadAnew(archive));
      }
    }
  }

  private static void change(Archive archive, Random random) {
    Notes notes = Notes.in("file " + random.nextInt(4));
    for (int i = random.nextInt(3); i >= 0; i--) {
      notes.test(
          "T" + random.nextInt(5),
          random.nextBoolean() ? null : "title" + random.nextInt(5),
          random.nextBoolean() ? null : "20" + (10 + random.nextInt(10)),
          random.nextBoolean() ? null : "205/55 R1" + random.nextInt(9),
          random.nextBoolean() ? null : SourceKind.MAKER,
          MODELS.get(random.nextInt(5)) + "||Remark " + random.nextInt(1000),
          "||About the day " + random.nextInt(1000));
    }
    notes.addTo(
        archive,
        addition -> {
          if (random.nextInt(3) == 0) {
            String alias = "alias" + random.nextInt(4);
            addition.put(
                new LineageRow(
                    MODELS.get(random.nextInt(5)),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    List.of(alias),
                    null));
          }
          if (random.nextInt(4) == 0) {
            addition.settleAs("Ostra IV", "Velmar Ostra 4");
          }
          if (random.nextInt(6) == 0) {
            addition.settleAs("Brannick Tal", "Brannick Tal 2");
          }
        });
  }

  private static List<List<Object>> told(NoteIndex index) {
    List<List<Object>> all = new ArrayList<>();
    for (NoteHit n : index.search(NoteQuery.of("").page(NoteQuery.MOST, 0)).hits()) {
      all.add(
          java.util.Arrays.asList(
              n.noteId(),
              n.report(),
              n.file(),
              n.test(),
              n.title(),
              n.date(),
              n.size(),
              n.source(),
              n.model(),
              n.discipline(),
              n.text(),
              n.cell()));
    }
    return all;
  }

  private static List<List<Object>> told(Archive archive) {
    List<List<Object>> all = new ArrayList<>();
    for (NoteRecord n : archive.notes()) {
      all.add(
          java.util.Arrays.asList(
              n.id(),
              n.report(),
              n.file(),
              n.test(),
              n.title(),
              n.date(),
              n.size(),
              n.source(),
              n.model(),
              n.discipline(),
              n.text(),
              n.cell()));
    }
    return all;
  }

  private static List<NoteCounts> spread(NoteIndex index) {
    return Stream.of("ostra", "iv", "tal", "alias0", "alias1", "alias2", "alias3", "title2", "")
        .map(text -> index.counts(new NoteQuery("\"" + text + "\"", NoteFilter.NONE, 1, 0)))
        .toList();
  }

  private static List<NoteCounts> spreadAnew(Archive archive) throws IOException {
    try (ByteBuffersDirectory memory = new ByteBuffersDirectory();
        NoteFeed feed = archive.noteFeed()) {
      new IndexUpdate(memory, feed, (done, total) -> {}).anew();
      try (NoteIndex index = NoteIndex.of(archive, new OpenIndex(memory))) {
        return spread(index);
      }
    }
  }
}
