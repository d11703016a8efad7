package org.griplore.ingest.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.names.Candidate;
import org.griplore.store.names.OpenName;
import org.griplore.store.names.OpenNames;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files are read by what was decided on their names, before or after; all of it is invented. */
class DecidedNamesTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2024-05-01T12:00:00Z"), ZoneOffset.UTC);
  private static final String LINEAGE =
      """
      maker,line,model,generation,follows,aliases
      Velmora,Aurelis,Aurelis 4,1,,Velmora Aurelis IV
      Velmora,Aurelis,Aurelis 5,2,Aurelis 4,
      Quillarn,Tarvion,Tarvion 11,1,,
      """;

  @TempDir Path folder;
  private int archives;

  private Archive newArchive() {
    return Archive.openOrCreate(folder.resolve("archive" + archives++));
  }

  private static Original original(String name, String text) {
    return Original.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static long add(Archive archive, String name, String text) {
    AddedSource added =
        new Intake(archive, DisciplineCatalogue.standard(), NOON)
            .add(original(name, text), ReadOptions.NONE);
    assertThat(added.refusal()).isNull();
    return added.outcome().findings();
  }

  /** A wide table; each tyre's figure tells it from the others. */
  private static String table(int test, String... tyres) {
    StringBuilder text = new StringBuilder("Test: T" + test + "\n\nTyre;Wet braking (m)\n");
    for (int i = 0; i < tyres.length; i++) {
      text.append(tyres[i]).append(';').append(30 + test).append('.').append(i).append('\n');
    }
    return text.toString();
  }

  /** The model of each figure. */
  private static Map<String, String> models(Archive archive) {
    Snapshot s = archive.snapshot();
    Map<String, String> models = new TreeMap<>();
    for (int i = 0; i < s.results().count(); i++) {
      int model = s.entries().model()[s.results().entry()[i]];
      models.put(Double.toString(s.results().value()[i]), s.models().get(model).name());
    }
    return models;
  }

  private static List<String> open(Archive archive) {
    return OpenNames.of(archive).stream().map(OpenName::name).toList();
  }

  @Test
  void anOpenNameIsListedWithCandidatesAndNeverAskedAgainOnceDecided() {
    try (Archive archive = newArchive()) {
      add(archive, "lineage.csv", LINEAGE);
      assertThat(add(archive, "a.csv", table(1, "Velmora Aurelis 4", "VM Aurel 4"))).isEqualTo(1);
      OpenName name = OpenNames.of(archive).get(0);
      assertThat(name.name()).isEqualTo("VM Aurel 4");
      assertThat(name.isAssumed()).isFalse();
      NameDecisions decisions = new NameDecisions(archive, NOON);
      decisions.sameAs(List.of("vm aurel 4"), "Aurelis 4", "their short form");
      assertThat(models(archive))
          .containsOnly(
              Map.entry("31.0", "Velmora Aurelis 4"), Map.entry("31.1", "Velmora Aurelis 4"));
      assertThat(open(archive)).isEmpty();
      assertThat(add(archive, "b.csv", table(2, "VM AUREL 4"))).as("no finding").isZero();
      assertThat(models(archive)).containsEntry("32.0", "Velmora Aurelis 4");
      decisions.takeBack(List.of("VM Aurel 4"), "");
      assertThat(models(archive)).containsEntry("32.0", "VM Aurel 4");
      assertThat(open(archive)).containsExactly("VM Aurel 4");
    }
  }

  @Test
  void aMisspellingIsOpenUntilItIsDecided() {
    try (Archive archive = newArchive()) {
      add(archive, "lineage.csv", LINEAGE);
      add(archive, "a.csv", table(1, "Quilarn Tarvion 11"));
      OpenName name = OpenNames.of(archive).get(0);
      assertThat(name.takenAs()).isEqualTo("Quillarn Tarvion 11");
      assertThat(name.candidates().get(0).score()).isGreaterThan(0.9);
      new NameDecisions(archive, NOON).own(List.of("Quilarn Tarvion 11"), "");
      assertThat(models(archive)).containsEntry("31.0", "Quilarn Tarvion 11");
      assertThat(add(archive, "b.csv", table(2, "Quilarn Tarvion 11", "Quillarn Tarvion 11")))
          .isZero();
      assertThat(models(archive))
          .containsEntry("32.0", "Quilarn Tarvion 11")
          .containsEntry("32.1", "Quillarn Tarvion 11");
    }
  }

  @Test
  void twoNamesThatStoodSideBySideAreUnlikely() {
    try (Archive archive = newArchive()) {
      add(archive, "a.csv", table(1, "Ottendal Ruvik Sport 2", "Ottendal Ruvik Spurt 2"));
      add(archive, "b.csv", table(2, "Ottendal Ruvak Spirt 2"));
      for (OpenName name : OpenNames.of(archive)) {
        for (Candidate candidate : name.candidates()) {
          boolean both =
              name.use().tests() == 1
                  && !name.name().contains("Ruvak")
                  && !candidate.model().contains("Ruvak");
          assertThat(candidate.reason().contains("both stood in test T1")).isEqualTo(both);
          assertThat(candidate.score()).isLessThan(both ? 0.51 : 1);
        }
      }
    }
  }

  @Test
  void theRestCanBeDecidedAtOnce() {
    try (Archive archive = newArchive()) {
      add(archive, "lineage.csv", LINEAGE);
      add(archive, "a.csv", table(1, "Haslund Vejgrip 7", "Brannick Tal", "Quilarn Tarvion 11"));
      new NameDecisions(archive, NOON).restAreOwn("");
      assertThat(open(archive)).containsExactly("Quilarn Tarvion 11");
    }
  }

  @Test
  void decisionsAreCarriedToAnotherArchive() {
    String file;
    Map<String, String> models;
    List<Decision> decided;
    try (Archive archive = newArchive()) {
      add(archive, "lineage.csv", LINEAGE);
      add(archive, "a.csv", table(1, "VM A, 4", "Quilarn Tarvion 11", "Brannick Tal"));
      NameDecisions names = new NameDecisions(archive, NOON);
      names.sameAs(List.of("VM A, 4"), "Velmora Aurelis 4", "line one\nline two, \"quoted\"");
      names.own(List.of("Quilarn Tarvion 11"), "");
      Map<Topic, String> descent = new TreeMap<>();
      descent.put(Topic.FOLLOWS, "Aurelis 5");
      descent.put(Topic.LAUNCHED, "03/2024");
      descent.put(Topic.SEASON, "Winterreifen");
      descent.put(Topic.SEGMENT, null);
      new DescentDecisions(archive, NOON)
          .decide("Brannick Tal", new DescentDecisions.Wanted(descent, List.of()), "");
      file = DecisionsFile.text(archive.decisions());
      models = models(archive);
      decided = archive.decisions();
    }
    assertThat(decided).hasSize(6);
    try (Archive archive = newArchive()) {
      List<Decision> read = DecisionsFile.read(original("decisions.csv", file), NOON);
      assertThat(read).isEqualTo(decided);
      archive.decide(read);
      add(archive, "a.csv", table(1, "VM A, 4", "Quilarn Tarvion 11", "Brannick Tal"));
      add(archive, "lineage.csv", LINEAGE);
      assertThat(models(archive)).isEqualTo(models);
      assertThat(archive.decide(read)).isEmpty();
    }
  }

  @Test
  void aFileWithoutDecisionsHasNone() {
    String file = DecisionsFile.text(List.of());
    assertThat(DecisionsFile.read(original("decisions.csv", file), NOON)).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "A 1,same-as,|line 2, value",
        "A 1,new,B 2|line 2, value",
        "A 1,perhaps,B 2|line 2, decision",
        ",new,|line 2, name",
        "A 1,launched,someday|expected a year or a date",
        "A 1,season,monsoon|expected summer, winter or all-season"
      })
  void aRowThatCannotBeUnderstoodIsRefused(String row, String message) {
    Original file = original("decisions.csv", "name,decision,value\n" + row + "\n");
    assertThatThrownBy(() -> DecisionsFile.read(file, NOON))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(message);
  }

  private static Decision decision(String name, Verdict verdict, String model) {
    return new Decision(name, Topic.MEANING, verdict, model, NOON.instant(), "");
  }

  private interface Step {
    void in(Archive archive);
  }

  /** Lineage, tests and decisions in any order: each figure ends with the same model. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theOrderOfFilesAndDecisionsChangesNothing(long seed) {
    List<Step> steps = new ArrayList<>();
    steps.add(archive -> add(archive, "lineage.csv", LINEAGE));
    steps.add(tableOf(1, "Velmora Aurelis 4", "Velmora Aurelys 5", "VM A4", "Tarvion 11"));
    steps.add(tableOf(2, "VELMORA AURELYS 5", "Quilarn Tarvion 11", "Vm-A4"));
    steps.add(tableOf(3, "Velmora Aurelis 5", "Quillarn Tarvion 11", "Aurelis Vier"));
    steps.add(tableOf(4, "Velmora Aurelis IV", "Aurelis Vier", "Velmora Aurelys 5"));
    steps.add(
        archive -> archive.decide(List.of(decision("Velmora Aurelys 5", Verdict.NONE, null))));
    steps.add(archive -> archive.decide(List.of(decision("VM A4", Verdict.IS, "Aurelis Vier"))));
    steps.add(
        archive ->
            archive.decide(List.of(decision("Aurelis Vier", Verdict.IS, "Velmora Aurelis 4"))));
    Map<String, String> expected =
        Map.ofEntries(
            Map.entry("31.0", "Velmora Aurelis 4"),
            Map.entry("31.1", "Velmora Aurelys 5"),
            Map.entry("31.2", "Velmora Aurelis 4"),
            Map.entry("31.3", "Quillarn Tarvion 11"),
            Map.entry("32.0", "Velmora Aurelys 5"),
            Map.entry("32.1", "Quillarn Tarvion 11"),
            Map.entry("32.2", "Velmora Aurelis 4"),
            Map.entry("33.0", "Velmora Aurelis 5"),
            Map.entry("33.1", "Quillarn Tarvion 11"),
            Map.entry("33.2", "Velmora Aurelis 4"),
            Map.entry("34.0", "Velmora Aurelis 4"),
            Map.entry("34.1", "Velmora Aurelis 4"),
            Map.entry("34.2", "Velmora Aurelys 5"));
    Collections.shuffle(steps, new Random(seed));
    try (Archive archive = newArchive()) {
      steps.forEach(step -> step.in(archive));
      Map<String, String> ended = models(archive);
      ended.replaceAll(
          (figure, model) -> model.equals("VELMORA AURELYS 5") ? "Velmora Aurelys 5" : model);
      assertThat(ended).isEqualTo(expected);
    }
  }

  private static Step tableOf(int test, String... tyres) {
    return archive -> add(archive, "t" + test + ".csv", table(test, tyres));
  }

  /** Decisions that are all taken back leave each figure where it would be without them. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void decisionsTakenBackLeaveNoTrace(long seed) {
    Random random = new Random(seed);
    List<String> names =
        List.of("Velmora Aurelys 5", "Velmora Aurelis IV", "VM A4", "Tarvion 11", "Brannick Tal");
    try (Archive with = newArchive();
        Archive without = newArchive()) {
      add(with, "lineage.csv", LINEAGE);
      add(without, "lineage.csv", LINEAGE);
      List<String> decided = new ArrayList<>();
      for (int test = 1; test <= 6; test++) {
        List<String> tyres = new ArrayList<>(names);
        Collections.shuffle(tyres, random);
        String[] some = tyres.subList(0, 3).toArray(String[]::new);
        add(with, "t" + test + ".csv", table(test, some));
        add(without, "t" + test + ".csv", table(test, some));
        String name = names.get(random.nextInt(names.size()));
        if (!decided.contains(name)) {
          decided.add(name);
          boolean own = random.nextBoolean();
          with.decide(
              List.of(
                  decision(
                      name, own ? Verdict.NONE : Verdict.IS, own ? null : "Quillarn Tarvion 11")));
        }
      }
      for (Decision standing : with.decisions()) {
        with.decide(List.of(decision(standing.name(), Verdict.OPEN, null)));
      }
      assertThat(models(with)).isEqualTo(models(without));
      assertThat(with.models().stream().map(m -> m.name() + m.aliases()).toList())
          .isEqualTo(without.models().stream().map(m -> m.name() + m.aliases()).toList());
    }
  }
}
