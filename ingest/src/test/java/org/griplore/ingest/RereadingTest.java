package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RereadingTest {
  private static final String TABLE =
      """
      Test: T1
      Date: 4 May 2021

      Tyre,Wet braking (m),Comfort,Remark
      Alpha One,"31,2",8,Bites early.
      Beta Two,"32,0",7,
      """;

  @TempDir Path folder;

  static List<IntakeCase> cases() throws IOException {
    return IntakeCase.all();
  }

  private static Intake intake(Archive archive) {
    return new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
  }

  private static List<Rereading.Outcome> reread(Archive archive) {
    List<Rereading.Outcome> outcomes = new ArrayList<>();
    for (Revision revision : archive.revisions()) {
      outcomes.add(Rereading.of(archive, intake(archive), revision));
    }
    return outcomes;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void whateverWasReadIsReadTheSameAgain(IntakeCase intakeCase) throws IOException {
    Path files = Files.createDirectory(folder.resolve("files"));
    intakeCase.copyTo(files);
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      intake(archive).add(List.of(files), intakeCase.options(), (name, done, total) -> {});
      assertThat(reread(archive))
          .allSatisfy(outcome -> assertThat(outcome.disagreements()).isEmpty());
      assertThat(reread(archive).stream().mapToLong(Rereading.Outcome::compared).sum())
          .isGreaterThanOrEqualTo(archive.figureCount() + archive.noteCount());
    }
  }

  private Archive added() {
    Archive archive = Archive.openOrCreate(folder.resolve("archive"));
    intake(archive)
        .add(
            Original.of("wet.csv", TABLE.getBytes(StandardCharsets.UTF_8)),
            new ReadOptions(Map.of("size", "205/55 R16 91V", "title", "Wet; size=dry")));
    return archive;
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "UPDATE result SET value = 31.3 WHERE value = 31.2"
            + "|wet.csv, row 5, column 2 (Alpha One, wet-braking, test T1): the archive has 31.3 m,"
            + " found \"31,2\", rule: decimal comma; the original gives 31.2 m, found \"31,2\"",
        "UPDATE result SET place = 1 WHERE value = 7"
            + "|wet.csv, row 6, column 3 (Beta Two, comfort, test T1): the archive has 7.0 points,"
            + " place 1, found \"7\"",
        "DELETE FROM result WHERE value = 8"
            + "|wet.csv, row 5, column 3 (Alpha One, comfort, test T1): the archive has nothing; the"
            + " original gives 8.0 points",
        "UPDATE note SET text = 'Bites late.'"
            + "|wet.csv, row 5, column 4 (Alpha One, note, test T1): the archive has Bites late.;"
            + " the original gives Bites early."
      })
  void whatWasChangedIsToldWithItsCell(String change, String sentence) throws SQLException {
    try (Archive archive = added()) {
      assertThat(reread(archive).get(0).disagreements()).isEmpty();
      try (Connection connection =
              DriverManager.getConnection("jdbc:sqlite:" + archive.folder().resolve("archive.db"));
          Statement statement = connection.createStatement()) {
        assertThat(
                statement.executeUpdate("DELETE FROM result_step")
                    + statement.executeUpdate(change))
            .isPositive();
      }
      assertThat(reread(archive).get(0).disagreements())
          .singleElement()
          .asString()
          .startsWith(sentence);
    }
  }

  @Test
  void whatWasReadByAMapIsReadByItAgain() {
    String map = "{\"columns\":[{\"header\":\"Comfort\",\"meaning\":\"ignored\"}]}";
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      intake(archive)
          .add(
              Original.of("wet.csv", TABLE.getBytes(StandardCharsets.UTF_8)),
              new ReadOptions(
                  Map.of("size", "205/55 R16 91V", "test", "T9"),
                  true,
                  ColumnMapReader.read(map, "map", DisciplineCatalogue.standard())));
      assertThat(archive.figureCount()).isEqualTo(2);
      assertThat(reread(archive).get(0).disagreements()).isEmpty();
    }
  }

  @Test
  void aFigureRepeatedInItsSourceIsNoDisagreement() {
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      String twice =
          """
          test,model,discipline,value,unit,place
          T1,Alpha One,wet-braking,31.2,m,
          T1,Beta Two,wet-braking,32.0,m,2
          T1,Alpha One,wet-braking,33.3,m,
          """;
      intake(archive)
          .add(Original.of("wet.csv", twice.getBytes(StandardCharsets.UTF_8)), ReadOptions.NONE);
      assertThat(archive.findings())
          .extracting(found -> found.finding().found())
          .contains("Alpha One, wet-braking: 33.3 m");
      assertThat(reread(archive).get(0).disagreements()).isEmpty();
    }
  }

  @Test
  void anOriginalThatCannotBeReadIsADisagreement() throws IOException {
    try (Archive archive = added()) {
      Files.delete(archive.originals().path(archive.revisions().get(0).sha256()));
      assertThat(reread(archive).get(0).disagreements())
          .singleElement()
          .asString()
          .startsWith("wet.csv cannot be read anew: ");
    }
  }
}
