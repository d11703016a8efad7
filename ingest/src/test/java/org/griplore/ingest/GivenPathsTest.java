package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GivenPathsTest {
  @TempDir Path folder;

  private List<String> names(List<Path> paths) {
    return paths.stream().map(path -> folder.relativize(path).toString()).sorted().toList();
  }

  private void write(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, "x");
  }

  @Test
  void whatProgramsLeaveBesideFilesIsPassedOverAndCounted() throws IOException {
    for (String name :
        List.of(
            "a.xlsx",
            "~$a.xlsx",
            ".~lock.a.xlsx#",
            "sub/b.csv",
            "sub/Thumbs.db",
            "sub/.DS_Store",
            "sub/._b.csv",
            "Desktop.ini",
            "c.csv.part",
            ".git/config",
            "README.md",
            "b.csv.details")) {
      write(name);
    }

    GivenPaths given = GivenPaths.of(List.of(folder));

    assertThat(names(given.sources())).containsExactly("a.xlsx", "sub/b.csv");
    assertThat(names(given.passedOver()))
        .containsExactly(
            ".git/config",
            ".~lock.a.xlsx#",
            "Desktop.ini",
            "c.csv.part",
            "sub/.DS_Store",
            "sub/._b.csv",
            "sub/Thumbs.db",
            "~$a.xlsx");
  }

  @Test
  void linksOutOfTheFolderAreNotFollowed(@TempDir Path elsewhere) throws IOException {
    write("a.csv");
    Files.writeString(elsewhere.resolve("secret.csv"), "x");
    Files.createSymbolicLink(folder.resolve("out.csv"), elsewhere.resolve("secret.csv"));
    Files.createSymbolicLink(folder.resolve("out"), elsewhere);
    Files.createSymbolicLink(folder.resolve("round"), folder);
    Files.createSymbolicLink(folder.resolve("gone.csv"), folder.resolve("not there"));
    Files.createSymbolicLink(folder.resolve("inside.csv"), folder.resolve("a.csv"));

    GivenPaths given = GivenPaths.of(List.of(folder));

    assertThat(names(given.sources())).containsExactly("a.csv", "inside.csv");
    assertThat(names(given.passedOver())).containsExactly("gone.csv", "out", "out.csv", "round");
  }

  @Test
  void aPipeOrDeviceIsRefused() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.csv");
    boolean made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    assumeTrue(made, "this system has no named pipes");

    assertThat(GivenPaths.of(List.of(folder)).sources()).isEmpty();
    assertThatThrownBy(() -> GivenPaths.of(List.of(pipe)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("a pipe or a device");
  }
}
