package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.query.Questions;
import org.griplore.query.question.Question;
import org.griplore.ui.DemoArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CommandsTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private static Run ask(String... words) {
    String[] all = java.util.Arrays.copyOf(words, words.length + 2);
    all[words.length] = "--archive";
    all[words.length + 1] = DemoArchive.folder().toString();
    return Run.of(all);
  }

  @Test
  void placingsFollowTheContract() throws IOException {
    Run run = ask("placings", "Velmora Aurelis 4", "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode answer = JSON.readTree(run.out());
    assertThat(answer.at("/question/kind").asText()).isEqualTo("placings");
    assertThat(answer.at("/question/options/model/0").asText()).isEqualTo("Velmora Aurelis 4");
    JsonNode row = answer.at("/rows/0");
    assertThat(row.fieldNames())
        .toIterable()
        .contains(
            "model",
            "tests",
            "within",
            "share",
            "shareLow",
            "shareHigh",
            "expectedByChance",
            "chanceOfAtLeast",
            "bestPlace",
            "medianPlace",
            "firstYear",
            "lastYear",
            "places");
    assertThat(row.at("/places").size()).isEqualTo(row.at("/tests").asInt());
    assertThat(row.at("/places/0").fieldNames())
        .toIterable()
        .contains("test", "date", "place", "field", "tied", "basis", "source");
    assertThat(answer.at("/sources").size()).isEqualTo(row.at("/tests").asInt());
    assertThat(answer.at("/excluded").size()).isPositive();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "outlook,--models,Velmora Aurelis 6,--models,Kirazumi Hayari S-300"
            + "|model,discipline,expected,low,high,expectedPlace,topThree",
        "backtest|discipline,tests,results,coverage50,coverage80,coverage95,error,naiveError,"
            + "rankAgreement,naiveRankAgreement",
        "reweigh,--weights,wet-braking=3,Velmora Aurelis 4|model,tests,within,share,acceptability",
        "runs,--difference,1|discipline,difference,cv,cvSource,power,runs"
      })
  void rowsFollowTheContract(String words, String keys) throws IOException {
    String[] asked = (words + ",--format,json").split(",");
    Run run = ask(asked);
    assertThat(run.code()).isZero();
    JsonNode rows = JSON.readTree(run.out()).at("/rows");
    assertThat(rows).isNotEmpty();
    rows.forEach(row -> assertThat(row.fieldNames()).toIterable().contains(keys.split(",")));
  }

  @Test
  void tradeoffAndDependsFollowTheContract() throws IOException {
    Run run = ask("tradeoff", "wet-braking", "rolling-resistance", "--format", "json");
    assertThat(run.code()).isZero();
    JsonNode tradeoff = JSON.readTree(run.out());
    assertThat(tradeoff.at("/rows/0").fieldNames())
        .toIterable()
        .contains("model", "x", "y", "xSe", "ySe", "front", "dx", "dy", "improvedBoth");
    assertThat(tradeoff.at("/relation").fieldNames())
        .toIterable()
        .contains("withinTests", "low", "high", "tests", "betweenModels", "betweenSteps");
    assertThat(tradeoff.at("/relation/steps").asInt()).isEqualTo(tradeoff.at("/steps").size());
    run = ask("depends", "all-season", "summer", "--on", "temperature", "--format", "json");
    assertThat(run.code()).isZero();
    JsonNode depends = JSON.readTree(run.out()).at("/rows/0");
    assertThat(depends.fieldNames())
        .toIterable()
        .contains("moderator", "slope", "se", "low", "high", "p", "tests", "unit");
    assertThat(depends.at("/moderator").asText()).isEqualTo("temperature");
    assertThat(depends.at("/unit").asText()).isEqualTo("% per 10 K");
    assertThat(depends.at("/points").size()).isEqualTo(depends.at("/tests").asInt());
  }

  @Test
  void aPlaceLeadsToItsCell() throws IOException {
    JsonNode place =
        JSON.readTree(ask("placings", "Velmora Aurelis 4", "--format", "json").out())
            .at("/rows/0/places/0");
    JsonNode origin =
        JSON.readTree(ask("origin", place.at("/result").asText(), "--format", "json").out());
    JsonNode row = null;
    for (JsonNode part : origin.at("/rows")) {
      row = part.at("/part").asText().equals("place") ? part : row;
    }
    assertThat(row).isNotNull();
    assertThat(row.at("/figure").asInt()).isEqualTo(place.at("/place").asInt());
    assertThat(row.at("/found").asText()).isEqualTo(place.at("/place").asText());
    assertThat(row.at("/row").asInt()).isPositive();
    assertThat(row.at("/sha256").asText()).hasSize(64);
  }

  @ParameterizedTest
  @CsvSource({"table", "csv", "markdown", "json"})
  void everyFormatNamesTheModel(String format) {
    Run run = ask("placings", "aurelis 4", "--format", format);
    assertThat(run.code()).isZero();
    String missing = format.equals("json") ? "\"null\"" : "null";
    assertThat(run.out()).contains("Velmora Aurelis 4").doesNotContain("NaN", missing);
  }

  @Test
  void noEvidenceIsExitCodeOne() {
    Run run = ask("placings", "Velmora Aurelis 4", "--from", "2031");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("No test that counts").contains("outside the dates asked for");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "placings,Velmora Aurlis 4|did you mean Velmora Aurelis 4",
        "placings,--top,none|Option `top` is \"none\"",
        "placings,--colour,red|Unknown option",
        "placings,--size,205-55|a size like 205/55 R16",
        "placings,--from,2020,--to,2019|Option `from`",
        "test,no-such-test|No test has the key",
        "standings,--discipline,swimming|Option `discipline`",
        "contrast,Velmora Aurelis 4|two models",
        "tradeoff,wet-braking|two disciplines",
        "tradeoff,wet-braking,overall|weights",
        "depends,summer,Velmora Aurelis 4,wear|two sides",
        "depends,all-season,summer,--on,wind|one of rim, width, mass, temperature, year",
        "outlook,--models,Velmora Aurelis 6|a field of two",
        "outlook|needs MODEL",
        "reweigh,--weights,wet-braking=0|at least one weight above zero",
        "reweigh,--weights,wet-braking=-1|a discipline and its weight",
        "runs,--difference,0|Option `difference`",
        "backtest,--discipline,overall|Option `discipline`",
        "find|needs TEXT",
        "fly|Unmatched argument"
      })
  void aRefusalIsOneSentence(String words, String says) {
    Run run = ask(words.split(","));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("griplore: ").contains(says).doesNotContain("\tat ");
    assertThat(run.err().strip().lines()).hasSize(1);
  }

  @Test
  void noArchiveIsARefusalThatSaysWhatToDo() {
    Run run = Run.of("tests", "--archive", folder.resolve("none").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("There is no archive in").contains("griplore add");
    assertThat(folder.resolve("none")).doesNotExist();
  }

  @Test
  void addTellsWhatBecameOfEachFileAndGoesOn() throws IOException {
    Path good = folder.resolve("good.csv");
    Files.writeString(
        good,
        """
        Test: T1
        Date: 4 May 2021
        Size: 205/55 R16 91V

        Tyre,Wet braking (m),Place
        Alpha One,31.2,1
        Beta Two,32.0,2
        """);
    Files.writeString(folder.resolve("page.html"), "<html><p>nothing here</p></html>");
    String archive = folder.resolve("archive").toString();
    Run run = Run.of("add", folder.toString(), "--kind", "own", "--archive", archive);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).contains("good.csv: 1 test, 2 tyres, ");
    assertThat(run.err()).contains("page.html is a page that holds no table");

    Run again = Run.of("add", good.toString(), "--kind", "own", "--archive", archive);
    assertThat(again.code()).isZero();
    assertThat(again.out()).contains("good.csv: in the archive already, nothing changed");

    Files.writeString(good, Files.readString(good).replace("32.0", "31.0"));
    Run changed = Run.of("add", good.toString(), "--kind", "own", "--archive", archive);
    assertThat(changed.out())
        .contains("good.csv: read anew")
        .contains("Changed: Beta Two, wet-braking, test T1: 32.0 m became 31.0 m.");
    assertThat(Run.of("check", "--archive", archive).code()).isZero();

    Run older = Run.of("revision", "1", "--archive", archive);
    assertThat(older.out()).contains("a newer revision replaced it").contains("32.00");
    Run newer = Run.of("revision", "2", "--archive", archive);
    assertThat(newer.out()).contains("it counts").contains("32.0 m became 31.0 m");
    Run none = Run.of("revision", "9", "--archive", archive);
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err()).contains("a revision's number, as in `sources`");
  }

  /** Two sentences of one note that both match stay two sentences. */
  @Test
  void sentencesOfANoteDoNotRunTogether() {
    String found = ask("find", "braking", "--format", "csv").out();
    assertThat(found).contains("in the other. Lateral grip comes from the wide shoulder");
  }

  @Test
  void aMissingPathMakesNoArchive() {
    Path archive = folder.resolve("archive");
    Run run = Run.of("add", folder.resolve("nowhere").toString(), "--archive", archive.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("There is no file or folder");
    assertThat(archive).doesNotExist();
  }

  static List<Question<?>> questions() {
    return Questions.all();
  }

  @ParameterizedTest
  @MethodSource("questions")
  void everyQuestionHasHelpWithAnExample(Question<?> question) {
    Run run = Run.of(question.kind(), "--help");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("Example: griplore " + question.kind());
    question
        .options()
        .forEach(
            option ->
                assertThat(run.out())
                    .contains(option.isArgument() ? option.value() : "--" + option.name()));
  }

  @Test
  void helpListsEveryCommand() {
    Run run = Run.of("--help");
    assertThat(run.out())
        .contains("placings", "find", "tests", "models", "add", "check", "serve", "demo")
        .contains("Exit codes");
  }
}
