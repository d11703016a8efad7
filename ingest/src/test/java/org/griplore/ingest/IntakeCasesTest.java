package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.ResultOrigin;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reads each folder of {@code intake-cases} into an archive of its own and compares all that is
 * there then. Adding a folder adds a case; see {@link IntakeCase}. With {@code
 * -Dgriplore.cases.record=true} the lists of cases that have none yet are written, for a person to
 * check line by line.
 */
class IntakeCasesTest {
  static List<IntakeCase> cases() throws IOException {
    return IntakeCase.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void isReadAsExpected(IntakeCase intakeCase, @TempDir Path folder) throws IOException {
    Path files = Files.createDirectory(folder.resolve("files"));
    intakeCase.copyTo(files);
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      List<AddedSource> added = add(archive, files, intakeCase.options());
      Map<String, List<String>> found = new LinkedHashMap<>();
      found.put("tests", ArchiveLines.tests(archive));
      found.put("results", ArchiveLines.results(archive));
      found.put("notes", ArchiveLines.notes(archive));
      found.put("findings", ArchiveLines.findings(archive));
      found.put("refused", refused(added));
      if (Boolean.getBoolean("griplore.cases.record")) {
        record(intakeCase, found);
        return;
      }
      SoftAssertions all = new SoftAssertions();
      found.forEach(
          (list, lines) ->
              all.assertThat(lines).as(list).containsExactlyElementsOf(intakeCase.lines(list)));
      all.assertAll();
      stepsLeadToTheValue(archive);
      long stamp = archive.stamp();
      List<AddedSource> again = add(archive, files, intakeCase.options());
      assertThat(again)
          .filteredOn(source -> source.refusal() == null)
          .allMatch(s -> s.outcome().status() == AdditionOutcome.Status.UNCHANGED);
      assertThat(archive.stamp()).as("stamp after a second reading").isEqualTo(stamp);
    }
  }

  /** Whatever was read: the last step of a result ends at its value, and no step leaves a gap. */
  private static void stepsLeadToTheValue(Archive archive) {
    for (long id : archive.snapshot().results().id()) {
      ResultOrigin origin = archive.originOf(id).orElseThrow();
      if (origin.steps().isEmpty()) {
        continue;
      }
      Step last = origin.steps().get(origin.steps().size() - 1);
      assertThat(last.after()).isEqualTo(origin.value());
      assertThat(last.afterUnit().symbol()).isEqualTo(origin.unit());
      Step before = null;
      for (Step step : origin.steps()) {
        if (step.cell() == null && step.before() != null && !step.rule().startsWith("ratio of")) {
          assertThat(step.before()).as(step.rule()).isEqualTo(before.after());
        }
        before = step;
      }
    }
  }

  @Test
  void thereAreCases() throws IOException {
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(40);
  }

  private static List<AddedSource> add(Archive archive, Path files, ReadOptions options) {
    return new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
        .add(List.of(files), options, (name, done, total) -> {});
  }

  private static List<String> refused(List<AddedSource> added) {
    List<String> sentences = new ArrayList<>();
    for (AddedSource source : added) {
      if (source.refusal() != null) {
        sentences.add(source.refusal().sentence());
      }
    }
    return sentences;
  }

  private static void record(IntakeCase intakeCase, Map<String, List<String>> found)
      throws IOException {
    ObjectNode expected = (ObjectNode) intakeCase.expected();
    found.forEach(
        (list, lines) -> {
          expected.remove(list);
          if (!lines.isEmpty()) {
            ArrayNode array = expected.putArray(list);
            lines.forEach(array::add);
          }
        });
    new ObjectMapper()
        .writerWithDefaultPrettyPrinter()
        .writeValue(intakeCase.folder().resolve("expected.json").toFile(), expected);
  }
}
