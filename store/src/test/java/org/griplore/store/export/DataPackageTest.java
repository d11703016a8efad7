package org.griplore.store.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Figures;
import org.griplore.store.archive.NoteRecord;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DataPackageTest {
  @TempDir Path folder;
  private int written;

  private Path write(Archive archive) {
    Path to = folder.resolve("package-" + ++written);
    DataPackage.write(archive, DisciplineCatalogue.standard(), to, (table, rows, about) -> {});
    return to;
  }

  private Map<String, String> bytes(Archive archive) {
    return PackageOnDisk.bytes(write(archive));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whateverIsInTheArchiveThePackageKeepsTheRules(long seed) {
    RandomSources sources = new RandomSources(seed);
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      for (int i = 0; i < 6; i++) {
        sources.deliver(archive);
      }
      PackageOnDisk read = PackageOnDisk.read(write(archive));
      assertThat(read.problems()).isEmpty();
      assertThat(read.table("sources").values("sha256"))
          .isEqualTo(archive.revisions().stream().map(Revision::sha256).toList());
      PackageOnDisk.Table results = read.table("results");
      assertThat(read.table("notes").values("text"))
          .containsExactlyElementsOf(archive.notes().stream().map(NoteRecord::text).toList());
      assertThat((long) results.rows().size()).isEqualTo(archive.figureCount());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void addThenUndoRestoresTheExportedFormByteForByte(long seed) {
    RandomSources sources = new RandomSources(seed);
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      for (int i = 0; i < 8; i++) {
        Map<String, String> before = bytes(archive);
        long readings = archive.revisions().size();
        sources.deliver(archive);
        if (archive.revisions().size() == readings) {
          continue;
        }
        Map<String, String> after = bytes(archive);
        archive.undo().orElseThrow();
        Map<String, String> again = bytes(archive);
        assertThat(again.keySet()).isEqualTo(before.keySet());
        for (String file : again.keySet().stream().filter(f -> f.endsWith(".csv")).toList()) {
          assertThat(again.get(file))
              .as("seed %d, step %d, %s", seed, i, file)
              .isEqualTo(before.get(file));
        }
        assertThat(archive.referenceProblems()).isEmpty();
        assertThat(after).isNotEqualTo(before);
        if (!sources.oneIn(3)) {
          sources.deliver(archive);
        }
      }
    }
  }

  @Test
  void rememberedColumnsAreGivenAwayForgottenOrNot() {
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      for (String layout : new String[] {"tyre | wet", "tyre | dry"}) {
        try (Addition addition =
            archive.begin(Figures.original(layout, layout), "table", Figures.NOON)) {
          addition.remember(layout, "{}");
          addition.commit();
        }
      }
      archive.forgetColumns(1, Figures.NOON);
      PackageOnDisk read = PackageOnDisk.read(write(archive));
      assertThat(read.problems()).isEmpty();
      assertThat(read.table("column_maps").values("forgotten_at"))
          .containsExactly("2024-05-01T12:00:00Z", null);
    }
  }

  @Test
  void aFolderWithSomethingInItIsRefusedAndNothingElseIsLeft() throws IOException {
    Path taken = Files.createDirectories(folder.resolve("out/taken"));
    Files.writeString(taken.resolve("mine.txt"), "mine");
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      for (Path place : new Path[] {taken, taken.resolve("mine.txt")}) {
        assertThatThrownBy(
                () ->
                    DataPackage.write(
                        archive, DisciplineCatalogue.standard(), place, (table, rows, about) -> {}))
            .isInstanceOf(Refusal.class)
            .hasMessageContaining("There is something in " + place + " already");
      }
    }
    assertThat(names(folder.resolve("out"))).containsExactly("taken");
    assertThat(names(taken)).containsExactly("mine.txt");
  }

  @Test
  void aMissingOriginalIsRefusedAndNothingIsHalfWritten() throws IOException {
    Path place = Files.createDirectories(folder.resolve("out/empty"));
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      Figures.add(archive, "first.csv", 1, 0);
      Path original = archive.originals().path(archive.revisions().get(0).sha256());
      Files.writeString(original, "changed");
      assertThatThrownBy(
              () ->
                  DataPackage.write(
                      archive, DisciplineCatalogue.standard(), place, (table, rows, about) -> {}))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("The original of first.csv is not what was read");
    }
    assertThat(names(folder.resolve("out"))).containsExactly("empty");
    assertThat(names(place)).isEmpty();
  }

  private static java.util.List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
