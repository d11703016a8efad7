package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.store.export.PackageOnDisk;
import org.griplore.ui.DemoArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportCommandTest {
  @TempDir Path folder;

  private static Run export(Path to, Path archive) {
    return Run.of("export", to.toString(), "--archive", archive.toString());
  }

  @Test
  void theDemoArchiveIsAPackageThatKeepsTheRulesAndIsTheSameTwice() throws IOException {
    Run run = export(folder.resolve("one"), DemoArchive.folder());
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .containsPattern("one: \\d+ tables, \\d+ rows, ")
        .contains("described in datapackage.json.");
    PackageOnDisk read = PackageOnDisk.read(folder.resolve("one"));
    assertThat(read.problems()).isEmpty();

    JsonNode tests =
        new ObjectMapper()
            .readTree(
                Run.of("tests", "--format", "json", "--archive", DemoArchive.folder().toString())
                    .out());
    assertThat(read.table("tests").rows()).hasSize(tests.at("/rows").size());

    List<String> originals = read.table("sources").values("original");
    assertThat(originals).allMatch(path -> Files.exists(folder.resolve("one").resolve(path)));

    export(folder.resolve("two"), DemoArchive.folder());
    assertThat(PackageOnDisk.bytes(folder.resolve("two")))
        .isEqualTo(PackageOnDisk.bytes(folder.resolve("one")));
  }

  @Test
  void badFoldersAreRefusedInOneSentence() throws IOException {
    Path archive = folder.resolve("archive");
    Path table = Files.writeString(folder.resolve("t.csv"), "Tyre,Wet braking (m)\nA,31\nB,32\n");
    Run.of("add", table.toString(), "--archive", archive.toString());

    assertThat(export(folder, archive).err()).contains("There is something in").contains("already");
    assertThat(export(archive.resolve("package"), archive).err())
        .contains("lies in the archive's own folder");
    assertThat(Run.of("export", "--archive", archive.toString()).err())
        .contains("griplore export my-package");
    assertThat(export(Path.of("/proc/none/package"), archive).err())
        .contains("cannot be written to /proc/none/package");
    for (Path bad : List.of(folder, archive.resolve("package"), Path.of("/proc/none/package"))) {
      Run run = export(bad, archive);
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err().strip().lines()).hasSize(1);
    }
  }
}
