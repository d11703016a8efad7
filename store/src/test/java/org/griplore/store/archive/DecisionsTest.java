package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.griplore.store.archive.NameRecord.Standing;
import org.griplore.store.check.ArchiveCheck;
import org.griplore.store.check.CheckLine;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.text.NoteQuery;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DecisionsTest {
  private static final Instant NOON = Instant.parse("2024-05-01T12:00:00Z");

  @TempDir Path folder;
  private Archive archive;

  @BeforeEach
  void make() {
    archive = Archive.openOrCreate(folder);
    lineage("lineage.csv", "Velmar Ostra 3", null);
    lineage("more.csv", "Velmar Ostra 4", "Velmar Ostra 3");
    test("a.csv", "T1", "Velmar Ostra 3", "Ostra Three");
    test("b.csv", "T2", "Velmar Ostro 4", "Velmar Ostra 3");
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private void lineage(String file, String model, String follows) {
    try (Addition addition = archive.begin(Figures.original(file, file), "lineage", Figures.NOON)) {
      addition.put(
          new LineageRow(
              model, "Velmar", "Ostra", null, null, null, null, follows, List.of(), null));
      addition.commit();
    }
  }

  /** "Velmar Ostro 4" is read as a misspelling; other names as models. */
  private void test(String file, String key, String... models) {
    try (Addition addition = archive.begin(Figures.original(file, file), "table", Figures.NOON)) {
      for (String model : models) {
        if (model.equals("Velmar Ostro 4")) {
          addition.taken(model, "Velmar Ostra 4", NameTaken.ASSUMED);
        }
      }
      addition.put(
          new TestReport(
              key,
              Details.NONE,
              Arrays.stream(models).map(m -> entry(m, "wet-braking")).toList(),
              List.of(new Note(models[1], null, "howls", new Cell("", 1, 1, "howls"))),
              List.of()));
      addition.commit();
    }
  }

  private static Entry entry(String model, String discipline) {
    Cell cell = new Cell("", 2, 2, "31.5");
    return new Entry(
        model,
        null,
        null,
        List.of(
            new Result(
                discipline, 31.5, Unit.METRE, null, null, null, ResultCells.ofValue(cell), "")));
  }

  private static Decision decision(String name, Topic topic, Verdict verdict, String value) {
    return new Decision(name, topic, verdict, value, NOON, "");
  }

  private static Decision same(String name, String model) {
    return decision(name, Topic.MEANING, Verdict.IS, model);
  }

  private static Decision own(String name) {
    return decision(name, Topic.MEANING, Verdict.NONE, null);
  }

  private static Decision back(String name) {
    return decision(name, Topic.MEANING, Verdict.OPEN, null);
  }

  private void decide(Decision... decisions) {
    archive.decide(List.of(decisions));
  }

  /** The models of all entries, in the order they were added. */
  private List<String> entries() {
    Snapshot snapshot = archive.snapshot();
    List<String> models = new ArrayList<>();
    for (int model : snapshot.entries().model()) {
      models.add(snapshot.models().get(model).name());
    }
    return models;
  }

  private NameRecord name(String name) {
    return archive.names().stream().filter(n -> n.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aDecisionMovesWhatIsStoredAndTakingItBackRestoresIt() {
    List<String> before = entries();
    List<ModelRecord> models = archive.models();
    assertThat(before)
        .containsExactly("Velmar Ostra 3", "Ostra Three", "Velmar Ostra 4", "Velmar Ostra 3");
    decide(same("OSTRA three", "Velmar Ostra 3"), own("Velmar Ostro 4"));
    assertThat(entries())
        .containsExactly("Velmar Ostra 3", "Velmar Ostra 3", "Velmar Ostro 4", "Velmar Ostra 3");
    assertThat(name("Ostra Three").standing()).isEqualTo(Standing.SAME);
    assertThat(archive.models().get(0).aliases()).containsExactly("Ostra Three");
    decide(back("Ostra Three"), back("Velmar Ostro 4"));
    assertThat(entries()).isEqualTo(before);
    assertThat(archive.models()).isEqualTo(models);
    assertThat(archive.decisions()).isEmpty();
    assertThat(archive.decisionHistory()).hasSize(4);
    assertThat(name("Velmar Ostro 4").standing()).isEqualTo(Standing.ASSUMED);
  }

  @Test
  void whatOneReportSaysOfOneModelUnderTwoNamesIsOneEntry() {
    try (Addition addition = archive.begin(Figures.original("d.csv", "d"), "table", Figures.NOON)) {
      addition.put(
          new TestReport(
              "T4",
              Details.NONE,
              List.of(entry("Brannick Tal", "wet-braking"), entry("B. Tal", "dry-braking")),
              List.of(),
              List.of()));
      addition.commit();
    }
    assertThat(entries()).hasSize(6);
    decide(same("B. Tal", "Brannick Tal"));
    assertThat(entries()).hasSize(5);
    int[] entry = archive.snapshot().results().entry();
    assertThat(entry[entry.length - 1]).isEqualTo(entry[entry.length - 2]).isEqualTo(4);
    decide(back("B. Tal"));
    assertThat(entries()).hasSize(6).endsWith("Brannick Tal", "B. Tal");
  }

  @Test
  void theTextIndexFollowsADecision() {
    try (NoteIndex index = NoteIndex.open(archive)) {
      assertThat(notesOf(index, "Velmar Ostra 3")).isEqualTo(1);
      decide(same("Ostra Three", "Velmar Ostra 3"));
      assertThat(notesOf(index, "Velmar Ostra 3")).isEqualTo(2);
      decide(back("Ostra Three"));
      assertThat(notesOf(index, "Velmar Ostra 3")).isEqualTo(1);
    }
    assertThat(ArchiveCheck.run(archive, (part, done, total) -> {})).allMatch(CheckLine::good);
  }

  private static long notesOf(NoteIndex index, String model) {
    return index.search(NoteQuery.of("howls")).hits().stream()
        .filter(hit -> hit.model().equals(model))
        .count();
  }

  @Test
  void theSameDecisionAgainChangesNothing() {
    assertThat(archive.decide(List.of(same("Ostra Three", "Velmar Ostra 3")))).hasSize(1);
    assertThat(archive.decide(List.of(same("ostra three", "velmar ostra 3")))).isEmpty();
  }

  private void refused(String because, Decision... decisions) {
    List<String> before = entries();
    List<Decision> standing = archive.decisions();
    assertThatThrownBy(() -> decide(decisions))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(because);
    assertThat(entries()).isEqualTo(before);
    assertThat(archive.decisions()).isEqualTo(standing);
  }

  @Test
  void whatContradictsADecisionIsRefused() {
    refused("nothing was decided on it", back("Ostra Three"));
    refused("they are one name", same("Ostra Three", "OSTRA THREE"));
    decide(same("Ostra Three", "Velmar Ostra 3"));
    refused("take that back first", same("Ostra Three", "Velmar Ostra 4"));
    refused("take that back first", own("Ostra Three"));
    refused(
        "(\"Velmar Ostra 3\" is the same as \"Ostra Three\" is the same as \"Velmar Ostra 3\")",
        same("Velmar Ostra 3", "Ostra Three"));
    refused("take that back first", own("Velmar Ostro 4"), same("Velmar Ostro 4", "Ostra Three"));
  }

  @Test
  void decisionsLeadOnOverOneAnother() {
    decide(same("Ostra Three", "Velmar Ostro 4"));
    assertThat(entries().get(1)).as("a named model is a model").isEqualTo("Velmar Ostro 4");
    decide(same("Velmar Ostro 4", "Velmar Ostra 3"));
    assertThat(entries()).containsOnly("Velmar Ostra 3");
    decide(back("Velmar Ostro 4"));
    assertThat(entries().get(1)).isEqualTo("Velmar Ostro 4");
  }

  @Test
  void whatALineageTableSaysTheOtherWayRoundIsRefused() {
    try (Addition addition =
        archive.begin(Figures.original("late.csv", "late"), "lineage", Figures.NOON)) {
      addition.settleAs("Ostra Three", "Velmar Ostra 3");
      addition.commit();
    }
    refused("\"Ostra Three\" means Velmar Ostra 3", same("Velmar Ostra 3", "Ostra Three"));
    decide(own("Ostra Three"));
    assertThat(entries().get(1)).isEqualTo("Ostra Three");
  }

  private ModelRecord model(String name) {
    return archive.models().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void descentIsDecidedOverWhatSourcesSay() {
    decide(
        decision("Velmar Ostra 4", Topic.FOLLOWS, Verdict.NONE, null),
        decision("Velmar Ostra 4", Topic.LAUNCHED, Verdict.IS, "2021-03"),
        decision("Ostra Three", Topic.LINE, Verdict.IS, "Ostra"));
    assertThat(model("Velmar Ostra 4").follows()).isNull();
    assertThat(model("Velmar Ostra 4").launched().text()).isEqualTo("2021-03");
    assertThat(model("Ostra Three").line()).isEqualTo("Ostra");
    decide(decision("Velmar Ostra 4", Topic.FOLLOWS, Verdict.OPEN, null));
    assertThat(model("Velmar Ostra 4").follows()).isEqualTo(model("Velmar Ostra 3").id());
  }

  @Test
  void aModelThatWouldFollowItselfIsRefusedWithTheChain() {
    refused(
        "Velmar Ostra 3 follows Velmar Ostra 4 follows Velmar Ostra 3",
        decision("Velmar Ostra 3", Topic.FOLLOWS, Verdict.IS, "Velmar Ostra 4"));
    refused("would follow itself", same("Velmar Ostra 4", "Velmar Ostra 3"));
  }

  @Test
  void decisionsOutliveTheReadingsTheyWereMadeOn() {
    decide(same("Velmar Ostro 4", "Velmar Ostra 3"));
    archive.undo();
    assertThat(archive.names()).noneMatch(n -> n.name().equals("Velmar Ostro 4"));
    assertThat(archive.decisions()).hasSize(1);
    test("b.csv", "T2", "Velmar Ostro 4", "Velmar Ostra 3");
    assertThat(entries().get(2)).isEqualTo("Velmar Ostra 3");
  }

  @Test
  void aDecisionForAModelThatNoFileNamesYetWaitsForIt() {
    decide(same("Ostra Three", "Brannick Tal"));
    assertThat(entries().get(1)).isEqualTo("Ostra Three");
    test("c.csv", "T3", "Brannick Tal", "Velmar Ostra 3");
    assertThat(entries().get(1)).isEqualTo("Brannick Tal");
  }
}
