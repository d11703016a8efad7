package org.griplore.query.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.Questions;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.directory.DirectoryEntry;
import org.griplore.query.question.Question;
import org.griplore.query.search.SearchQuestion.SearchRow;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All names and notes are invented. */
class SearchQuestionTest {
  @TempDir Path folder;

  private List<SearchRow> sought(String... words) {
    try (TestArchive archive =
        new TestArchive(folder)
            .add(
                TestArchive.told("spring-2021", "2021", SourceKind.OWN, null)
                    .with("Orlo Tar 1", "wet-braking", 33.0, Unit.METRE, null)
                    .noted("Orlo Tar 1", "wet-braking", "It floats early in deep puddles."))) {
      Answer<?> answer = archive.ask("search", Map.of("text", List.of(words)));
      return answer.rows().stream().map(SearchRow.class::cast).toList();
    }
  }

  @Test
  void everyKindIsFoundAndSaysWhichQuestionTellsOfIt() {
    assertThat(sought("orlo"))
        .extracting(SearchRow::kind, SearchRow::name, SearchRow::question, SearchRow::value)
        .contains(
            org.assertj.core.groups.Tuple.tuple(
                DirectoryEntry.Kind.MODEL, "Orlo Tar 1", "model", "Orlo Tar 1"));
    assertThat(sought("spring"))
        .extracting(SearchRow::kind, SearchRow::question, SearchRow::value)
        .contains(
            org.assertj.core.groups.Tuple.tuple(DirectoryEntry.Kind.TEST, "test", "spring-2021"));
    assertThat(sought("wet-brak"))
        .extracting(SearchRow::kind, SearchRow::question, SearchRow::value)
        .contains(
            org.assertj.core.groups.Tuple.tuple(
                DirectoryEntry.Kind.DISCIPLINE, "standings", "wet-braking"));
    assertThat(sought("standings")).extracting(SearchRow::question).contains("standings");
  }

  @Test
  void notesAreFoundByBeginningsAndByMisspeltWords() {
    assertThat(sought("pudd")).extracting(SearchRow::kind).contains(DirectoryEntry.Kind.NOTE);
    assertThat(sought("puddels")).extracting(SearchRow::kind).contains(DirectoryEntry.Kind.NOTE);
  }

  @ParameterizedTest(name = "\"{0}\" leads to {1}")
  @CsvSource({
    "drift, log",
    "predecessor, generations",
    "predecessor, lineage",
    "successor, generations",
    "rank, placings",
    "versus, contrast",
    "gaps, coverage",
    "never tested, coverage",
    "forecast, outlook",
    "weights, reweigh",
    "misspellings, settle",
    "where a figure comes from, origin",
    "sample size, runs",
    "temperature, depends",
    "warnings, findings",
    "what changed, sources"
  })
  void pagesAreFoundByWhatTheyDo(String words, String question) {
    assertThat(sought(words.split(" ")))
        .filteredOn(row -> row.kind() == DirectoryEntry.Kind.QUESTION)
        .extracting(SearchRow::question)
        .contains(question);
  }

  @Test
  void everyPageHasWordsOfItsOwn() {
    for (Question<?> question : Questions.all()) {
      if (!question.kind().equals("search")) {
        assertThat(PageWords.of(question)).as(question.kind()).hasSizeGreaterThan(2);
      }
    }
  }

  @ParameterizedTest(name = "\"{0}\" leads to the tests of {1} {2}")
  @CsvSource({
    "lomsk, venue, Lomskär ring",
    "estate car, vehicle, estate car",
    "korvet, publication, Korvetten",
    "205/55, size, 205/55 R16"
  })
  void whatTestsShareLeadsToThem(String typed, String option, String value) {
    try (TestArchive archive =
        new TestArchive(folder)
            .add(
                TestArchive.told("own-1", "2021", SourceKind.OWN, "205/55 R16 91V")
                    .at("Korvetten", "estate car", "Lomsk\u00e4r ring")
                    .with("Orlo Tar 1", "wet-braking", 33.0, Unit.METRE, null),
                TestArchive.told("own-2", "2022", SourceKind.OWN, "225/45 R17 94W")
                    .at("Brofallet", "small van", "Nordvattnet")
                    .with("Orlo Tar 1", "wet-braking", 34.0, Unit.METRE, null))) {
      SearchRow row =
          archive.ask("search", Map.of("text", List.of(typed.split(" ")))).rows().stream()
              .map(SearchRow.class::cast)
              .filter(one -> option.equals(one.option()))
              .findFirst()
              .orElseThrow();
      assertThat(row.value()).isEqualTo(value);
      assertThat(row.question()).isEqualTo("tests");
      Answer<?> tests = archive.ask("tests", Map.of(row.option(), List.of(row.value())));
      assertThat(tests.rows()).hasSize(1);
      assertThat(tests.summary()).contains(value);
    }
  }

  @Test
  void whatIsNowhereHasNoEvidence() {
    assertThat(sought("qqqq")).isEmpty();
    assertThat(sought("\"-*")).isNotNull();
  }
}
