package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UndoCommandTest {
  @TempDir Path folder;

  private Run run(String... words) {
    String[] all = java.util.Arrays.copyOf(words, words.length + 2);
    all[words.length] = "--archive";
    all[words.length + 1] = folder.resolve("archive").toString();
    return Run.of(all);
  }

  private Path table(String name, String test, String metres) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        """
        Test: %s
        Date: 4 May 2021
        Size: 205/55 R16 91V

        Tyre,Wet braking (m),Remark
        Alpha One,31.2,Bites early on cold asphalt.
        Beta Two,%s,Calm.
        """
            .formatted(test, metres));
  }

  @Test
  void oneAddOfTwoFilesIsTakenBackAndWhatItReplacedCountsAgain() throws IOException {
    Path first = table("first.csv", "T1", "32.0");
    run("add", first.toString(), "--kind", "own");
    table("first.csv", "T1", "31.0");
    Path second = table("second.csv", "T2", "33.0");
    run("add", first.toString(), second.toString(), "--kind", "own");
    assertThat(run("find", "bites early", "--format", "csv").out().lines()).hasSize(3);

    Run dry = run("undo", "--dry-run");
    assertThat(dry.code()).isZero();
    assertThat(dry.out())
        .contains("Would be taken back: 2 revisions added on 2024-12-01 00:00:00 UTC:")
        .contains("first.csv, revision 2 of " + first)
        .contains("Would count again: first.csv, revision 1 of ")
        .endsWith("Nothing was changed.\n");
    assertThat(run("tests", "--format", "csv").out()).contains("T2");

    Run undone = run("undo");
    assertThat(undone.code()).isZero();
    assertThat(undone.out())
        .contains("Taken back: 2 revisions")
        .contains("With them: 4 tyres, 4 results, 4 notes")
        .contains("Counts again: first.csv, revision 1 of ")
        .contains("Tests that no other revision tells of: T2.");
    assertThat(run("tests", "--format", "csv").out()).doesNotContain("T2");
    assertThat(run("find", "bites early", "--format", "csv").out().lines()).hasSize(2);
    assertThat(run("test", "T1", "--format", "csv").out()).contains("32").doesNotContain("31.0");
    assertThat(run("check").code()).isZero();

    assertThat(run("undo").code()).isZero();
    Run nothing = run("undo");
    assertThat(nothing.code()).isEqualTo(1);
    assertThat(nothing.out()).contains("nothing to take back");
  }

  @Test
  void noArchiveIsRefused() {
    Run run = run("undo");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("There is no archive in");
  }
}
