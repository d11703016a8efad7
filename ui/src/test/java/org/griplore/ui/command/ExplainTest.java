package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is explained before it is added, and put right by a map. */
class ExplainTest {
  @TempDir Path folder;
  private Path table;
  private Path map;
  private Path archive;

  @BeforeEach
  void files() throws IOException {
    table = folder.resolve("summer.csv");
    map = folder.resolve("summer.json");
    archive = folder.resolve("archive");
    Files.writeString(
        table, "Date: 2021-06-14\n\nTyre;NaBr;Comfort\nOvrand One;101;7\nOvrand Two;105;8\n");
  }

  private Run add(String... words) {
    String[] all = new String[words.length + 4];
    all[0] = "add";
    all[1] = table.toString();
    System.arraycopy(words, 0, all, 2, words.length);
    all[words.length + 2] = "--archive";
    all[words.length + 3] = archive.toString();
    return Run.of(all);
  }

  @Test
  void explainingWritesNothing() {
    Run run = add("--explain");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("nothing was written")
        .containsPattern("2 +NaBr +row 3, column 2 +not understood +101 \\| 105")
        .containsPattern("3 +Comfort +row 3, column 3 +comfort +points +by its header")
        .contains("test summer: 2 tyres, 2 results, 0 notes, 2021-06-14")
        .contains("not read: row 3, column 2, \"NaBr\"; expected a discipline");
    assertThat(archive).doesNotExist();
  }

  @Test
  void aMapWrittenByExplainingIsCorrectedAndUsed() throws IOException {
    assertThat(add("--explain", "--map-out", map.toString()).code()).isZero();
    Files.writeString(
        map, Files.readString(map).replace("\"ignored\"", "\"wet-braking\",\"unit\":\"ft\""));
    assertThat(add("--map", map.toString(), "--explain").out())
        .containsPattern("NaBr +row 3, column 2 +wet-braking +ft +as was said");
    assertThat(add().out()).contains("2 results");
    assertThat(add("--map", map.toString()).out()).contains("read anew").contains("4 results");
    assertThat(add("--map", map.toString()).out()).contains("in the archive already");
    Run standings =
        Run.of("standings", "--discipline", "wet-braking", "--archive", archive.toString());
    assertThat(standings.out()).contains("Ovrand One");
  }

  @Test
  void whatAMapSaidIsListedUsedAgainAndForgotten() throws IOException {
    Files.writeString(
        map,
        "{\"columns\": [{\"header\": \"NaBr\", \"meaning\": \"wet-braking\", \"unit\": \"ft\"}]}");
    add("--map", map.toString());
    assertThat(columns().out())
        .contains("1  tyre | nabr | comfort  said of summer.csv on 2024-12-01")
        .contains("\"wet-braking\"");
    Path later = folder.resolve("later.csv");
    Files.writeString(later, "Tyre;NaBr;Comfort\nOvrand One;102;7\nOvrand Two;106;8\n");
    Run added = Run.of("add", later.toString(), "--archive", archive.toString());
    assertThat(added.out()).contains("4 results");
    assertThat(columns("--forget", "1").code()).isZero();
    assertThat(columns().code()).isEqualTo(1);
    assertThat(columns("--forget", "1").err()).contains("nothing was forgotten");
    assertThat(columns("--forget", "x").code()).isEqualTo(2);
  }

  private Run columns(String... words) {
    String[] all = java.util.Arrays.copyOf(words, words.length + 3);
    System.arraycopy(words, 0, all, 1, words.length);
    all[0] = "columns";
    all[words.length + 1] = "--archive";
    all[words.length + 2] = archive.toString();
    return Run.of(all);
  }

  @Test
  void aMapThatIsThereIsNotOverwritten() throws IOException {
    Files.writeString(map, "mine");
    Run run = add("--explain", "--map-out", map.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("is there already");
    assertThat(map).hasContent("mine");
  }

  @Test
  void aMapIsRefusedWithItsPlace() throws IOException {
    Files.writeString(map, "{\"columns\": [{\"header\": \"NaBr\", \"meaning\": \"wet\"}]}");
    Run run = add("--map", map.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .hasLineCount(1)
        .contains("summer.json, columns[0].meaning: found \"wet\"; expected tyre,");
    assertThat(archive).doesNotExist();
    assertThat(add("--map-out", map.toString()).err()).contains("--explain");
    assertThat(add("--map", folder.toString()).err()).contains("cannot be read");
  }
}
