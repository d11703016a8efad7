package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.griplore.query.FormerWord;
import org.griplore.ui.DemoArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words as people type them: those of the version before, and disciplines by their names. */
class WordsTest {
  private static JsonNode json(String line) throws IOException {
    return new ObjectMapper().readTree(Typed.on(DemoArchive.folder(), line, "json"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "seek velmora | search velmora",
        "tally braking --from 2018 | find braking --count --from 2018",
        "reading 3 | revision 3",
        "standings --discipline \"Wet braking\" | standings --discipline wet-braking",
        "tradeoff \"wet braking\" \"Rolling resistance\" | tradeoff wet-braking rolling-resistance",
        "coverage --missing \"snow braking\" | coverage --missing snow-braking",
        "reweigh --weights \"wet braking=2,wear=1\" | reweigh --weights wet-braking=2;wear=1"
      })
  void meanTheSame(String one, String other) throws IOException {
    assertThat(json(one).get("rows")).isNotEmpty().isEqualTo(json(other).get("rows"));
  }

  @Test
  void ofTheVersionBeforeAreNotTold() {
    String help = Run.of("--help").out();
    FormerWord.ALL.forEach(
        former -> {
          assertThat(help).doesNotContainPattern("(?m)^ +" + former.word() + " ");
          assertThat(help).containsPattern("(?m)^ +" + former.kind() + " ");
        });
  }

  @Test
  void helpSaysWhatEachRowTells() {
    String help = Run.of("placings", "--help").out().replaceAll("\\s+", " ");
    assertThat(help)
        .contains("Each row tells:")
        .contains("shareLow: Lower end of its 95 % interval.")
        .contains("Example: griplore placings");
  }

  @Test
  void aReportHasOneNumberInEveryAnswer() throws IOException {
    Map<String, Integer> numbers = new HashMap<>();
    for (JsonNode source : json("tests").get("sources")) {
      numbers.put(
          source.get("test").asText() + source.get("file").asText(), source.get("id").asInt());
    }
    JsonNode found = json("find braking --limit 100").get("sources");
    assertThat(found).isNotEmpty();
    int common = 0;
    for (JsonNode source : found) {
      Integer number = numbers.get(source.get("test").asText() + source.get("file").asText());
      if (number != null) {
        assertThat(source.get("id").asInt()).as(source.toString()).isEqualTo(number);
        common++;
      }
    }
    assertThat(common).isPositive();
  }

  @Test
  void anUnknownEndingIsRefusedInASentence(@TempDir Path folder) {
    Run run =
        Run.of(
            "tests",
            "--archive",
            DemoArchive.folder().toString(),
            "--output",
            folder.resolve("tests.pdf").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains("tests.pdf says no format", ".csv", ".xlsx");
    assertThat(folder).isEmptyDirectory();
  }
}
