package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettleCommandTest {
  @TempDir Path folder;

  private Run run(String... words) {
    String[] all = java.util.Arrays.copyOf(words, words.length + 2);
    all[words.length] = "--archive";
    all[words.length + 1] = folder.resolve("archive").toString();
    return Run.of(all);
  }

  @BeforeEach
  void add() throws IOException {
    Path lineage =
        Files.writeString(
            folder.resolve("lineage.csv"),
            """
            maker,line,model,generation,launched,follows
            Velmora,Aurelis,Aurelis 4,1,2016,
            Velmora,Aurelis,Aurelis 5,2,2019,Aurelis 4
            """);
    Path table =
        Files.writeString(
            folder.resolve("t1.csv"),
            "Test: T1\n\nTyre;Wet braking (m)\nVelmora Aurelys 5;31\nHaslund Vejgrip 7;32\n");
    assertThat(run("add", lineage.toString(), table.toString()).code()).isZero();
  }

  @Test
  void undecidedNamesAreListedWithTheirCandidates() {
    Run list = run("settle", "--format", "csv");
    assertThat(list.code()).isZero();
    assertThat(list.out().lines()).hasSize(3);
    assertThat(list.out().lines().toList().get(1))
        .startsWith("\"Velmora Aurelys 5\",\"Velmora Aurelis 5\",\"Velmora Aurelis 5\",0.9");
    assertThat(list.out().lines().toList().get(2))
        .startsWith("\"Haslund Vejgrip 7\",\"Haslund Vejgrip 7\",,");
    assertThat(run("findings", "--format", "csv").out())
        .contains("`griplore settle \"\"Haslund Vejgrip 7\"\" --same-as MODEL`, or `--new`");
  }

  @Test
  void twoTestsAreDecidedToBeOneOrTwo() throws IOException {
    String rows = "Tyre;Wet braking (m)\nA 1;31.42\nB 2;32.18\nC 3;33.77\nD 4;35.26\nE 5;30.91\n";
    Path first =
        Files.writeString(folder.resolve("r1.csv"), "Test: R1\nDate: 2021-05-01\n\n" + rows);
    Path again =
        Files.writeString(
            folder.resolve("r2.csv"),
            "Test: R2\nDate: 2021-06-20\n\n" + rows.replace("35.26", "35.62"));
    assertThat(run("add", first.toString(), again.toString()).code()).isZero();
    Run retold = run("retold", "--format", "json");
    assertThat(retold.out()).contains("R1", "R2", "35.62");
    assertThat(run("settle", "R1", "R2", "--two-tests", "--because", "another day").out())
        .isEqualTo("R1 and R2 are two tests, and both count.\n");
    assertThat(run("retold").out()).contains("No two tests look like one.");
    assertThat(run("settle", "R1", "R2", "--same-test").out())
        .isEqualTo("R1 and R2 are one test, which counts once.\n");
    assertThat(run("retold").out()).contains("decided to be one");
    assertThat(run("settle", "R1", "R2", "--open-test").code()).isZero();
    assertThat(run("retold").out()).contains("equal figures");
    assertThat(run("settle", "R1", "R9", "--same-test").err())
        .isEqualTo(
            "griplore: Option `NAME` is \"R9\"; expected the key of a test, as `griplore tests` lists"
                + " them.\n");
  }

  @Test
  void decisionsAreMadeTakenBackAndCarriedElsewhere() throws IOException {
    Path file = folder.resolve("decisions.csv");
    assertThat(run("settle", "aurelys", "--new").err())
        .contains("\"aurelys\" is no model in the archive");
    assertThat(run("settle", "velmora aurelys 5", "--same-as", "Aurelis 5").out())
        .startsWith(
            "\"Velmora Aurelys 5\" is the same as Velmora Aurelis 5 (\"aurelys\" for \"aurelis\"");
    assertThat(run("settle", "--new", "--rest").out())
        .isEqualTo("\"Haslund Vejgrip 7\" is a model of its own (no other name is like it).\n");
    assertThat(run("settle").out()).contains("No name is undecided.");
    assertThat(run("findings", "--sort", "assumed", "--sort", "new-name").out())
        .contains("names that were decided since");
    assertThat(run("settle", "--export", file.toString()).out()).startsWith("2 decisions written");
    assertThat(run("settle", "Haslund Vejgrip 7", "--undecided").out())
        .isEqualTo("\"Haslund Vejgrip 7\" is undecided.\n");
    assertThat(run("settle", "--import", file.toString()).out())
        .isEqualTo("\"Haslund Vejgrip 7\" is a model of its own (no other name is like it).\n");
    assertThat(run("settle", "--import", file.toString()).out()).startsWith("It is decided so");
    assertThat(run("decisions", "--which", "ever", "--format", "csv").out().lines()).hasSize(5);
    assertThat(run("names", "--standing", "same", "--format", "csv").out())
        .contains("\"Velmora Aurelys 5\",\"Velmora Aurelis 5\",same");
  }

  @Test
  void descentIsShownWithWhoSaysSoAndDecided() {
    assertThat(run("lineage", "Aurelis 5", "--format", "csv").out())
        .contains("launched,2019,\"lineage.csv, row 3, column 3\"");
    Run decided = run("lineage", "Aurelis 5", "--launched", "2019-02", "--starts-line");
    assertThat(decided.out())
        .contains("\"Velmora Aurelis 5\" has the launch 2019-02.")
        .contains("\"Velmora Aurelis 5\" starts its line.");
    assertThat(run("lineage", "Aurelis 5", "--format", "csv").out())
        .contains("launched,2019-02,\"decided on 2024-12-01\",")
        .contains("row 3, column 3: 2019\"");
    assertThat(run("lineage", "Aurelis 5", "--undecided", "all").code()).isZero();
    assertThat(run("lineage", "Aurelis 4", "--follows", "Aurelis 5").err())
        .contains("would follow itself (Velmora Aurelis 4 follows Velmora Aurelis 5 follows");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "settle Haslund, expected with a name one of",
    "settle --new, expected the name to decide on",
    "settle X --new --undecided, expected one of them",
    "settle X --rest --new, no names beside it",
    "settle --import nowhere.csv, nowhere.csv",
    "lineage, expected one model",
    "lineage Nobody --line X, is no model in the archive",
    "lineage Velmora-Aurelis-5 --season monsoon, 'expected summer, winter or all-season'",
    "lineage Velmora-Aurelis-5 --undecided colour, 'all, follows, maker'",
    "lineage Velmora-Aurelis-5 --undecided line, nothing was decided on it",
    "lineage Velmora-Aurelis-5 --undecided all, Nothing is decided"
  })
  void whatCannotBeDoneIsSaidInASentence(String words, String sentence) {
    Run run = run(words.split(" "));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("griplore: ").contains(sentence).hasLineCount(1);
  }
}
