package org.griplore.query.seek;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.griplore.query.TestArchive;
import org.griplore.query.answer.Answer;
import org.griplore.query.directory.DirectoryEntry;
import org.griplore.query.seek.SeekQuestion.SeekRow;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All names and notes are invented. */
class SeekQuestionTest {
  @TempDir Path folder;

  private List<SeekRow> sought(String... words) {
    try (TestArchive archive =
        new TestArchive(folder)
            .add(
                TestArchive.told("spring-2021", "2021", SourceKind.OWN, null)
                    .with("Orlo Tar 1", "wet-braking", 33.0, Unit.METRE, null)
                    .noted("Orlo Tar 1", "wet-braking", "It floats early in deep puddles."))) {
      Answer<?> answer = archive.ask("seek", Map.of("text", List.of(words)));
      return answer.rows().stream().map(SeekRow.class::cast).toList();
    }
  }

  @Test
  void everyKindIsFoundAndSaysWhichQuestionTellsOfIt() {
    assertThat(sought("orlo"))
        .extracting(SeekRow::kind, SeekRow::name, SeekRow::question, SeekRow::value)
        .contains(
            org.assertj.core.groups.Tuple.tuple(
                DirectoryEntry.Kind.MODEL, "Orlo Tar 1", "model", "Orlo Tar 1"));
    assertThat(sought("spring"))
        .extracting(SeekRow::kind, SeekRow::question, SeekRow::value)
        .contains(
            org.assertj.core.groups.Tuple.tuple(DirectoryEntry.Kind.TEST, "test", "spring-2021"));
    assertThat(sought("wet-brak"))
        .extracting(SeekRow::kind, SeekRow::question, SeekRow::value)
        .contains(
            org.assertj.core.groups.Tuple.tuple(
                DirectoryEntry.Kind.DISCIPLINE, "standings", "wet-braking"));
    assertThat(sought("standings")).extracting(SeekRow::question).contains("standings");
  }

  @Test
  void notesAreFoundByBeginningsAndByMisspeltWords() {
    assertThat(sought("pudd")).extracting(SeekRow::kind).contains(DirectoryEntry.Kind.NOTE);
    assertThat(sought("puddels")).extracting(SeekRow::kind).contains(DirectoryEntry.Kind.NOTE);
  }

  @Test
  void whatIsNowhereHasNoEvidence() {
    assertThat(sought("qqqq")).isEmpty();
    assertThat(sought("\"-*")).isNotNull();
  }
}
