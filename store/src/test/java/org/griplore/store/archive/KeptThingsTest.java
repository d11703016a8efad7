package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.griplore.store.archive.Figures.NOON;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Price;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.ReportWeight;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.Retraction;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestDecision;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.Variant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands beside plain new tyres, single results and what users keep. */
class KeptThingsTest {
  private static final Instant NOW = NOON.instant();

  @TempDir Path folder;
  private Archive archive;

  @BeforeEach
  void open() {
    archive = Archive.openOrCreate(folder);
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private static Result metres(double value) {
    return new Result(
        "wet-braking",
        value,
        Unit.METRE,
        null,
        null,
        null,
        new ResultCells(null, null, null, null),
        "");
  }

  private void add(Entry... entries) {
    try (Addition addition =
        archive.begin(Figures.original("a.csv", "a" + entries.length), "table", NOON)) {
      addition.put(
          new TestReport(
              "T1",
              Details.NONE,
              List.of(entries),
              List.of(),
              List.of(),
              List.of(),
              List.of(new ReportWeight("wet-braking", 0.4, null))));
      addition.put(new DraftTable("Wet", 3, 9, 1, 4, "[{\"score\":0.8}]"));
      addition.commit();
    }
  }

  @Test
  void statesVariantsWindowsAndRepeatsStayApart() throws SQLException {
    Circumstance from80 = Circumstance.MEASURED.within(80.0, 20.0);
    Circumstance label = Circumstance.of(ResultKind.DECLARED);
    TyreState worn = TyreState.worn(3.0);
    Variant ev = new Variant(true, false, false, true);
    Price price =
        new Price(412.5, "EUR", new TestDate("2024-03"), Price.Per.SET, null, "a shop", null);
    add(
        new Entry("Velmar Ostra 1", null, null, List.of(metres(30), metres(31).repeated(3, 2))),
        new Entry(
            "Velmar Ostra 1",
            null,
            null,
            worn,
            ev,
            List.of(metres(33).under(from80), metres(34).under(label)),
            List.of(price)));

    Snapshot snapshot = archive.snapshot();
    assertThat(snapshot.entries().count()).isEqualTo(2);
    assertThat(snapshot.entries().state()).containsExactly(TyreState.NEW, worn);
    assertThat(snapshot.entries().variant()).containsExactly(Variant.STANDARD, ev);
    ResultColumns results = snapshot.results();
    assertThat(results.value()).containsExactly(30, 31, 33, 34);
    assertThat(results.repeat()).containsExactly((short) 1, (short) 2, (short) 1, (short) 1);
    assertThat(
            Arrays.stream(results.circumstance())
                .mapToObj(position -> snapshot.circumstances().get(position)))
        .containsExactly(Circumstance.MEASURED, Circumstance.MEASURED, from80, label);
    assertThat(archive.findings()).isEmpty();
    try (FigureFeed feed = archive.figuresOf(1)) {
      assertThat(feed.next().result()).isEqualTo(metres(30));
      assertThat(feed.next().result()).isEqualTo(metres(31).repeated(3, 2));
      StoredFigure third = feed.next();
      assertThat(third.result()).isEqualTo(metres(33).under(from80));
      assertThat(third.state()).isEqualTo(worn);
      assertThat(third.variant()).isEqualTo(ev);
    }
    try (Connection connection = archive.ownReading()) {
      assertThat(
              Sql.first(
                      connection,
                      "SELECT amount || ' ' || currency || ' a ' || per || ', ' || day || ', ' || shop"
                          + " FROM prices",
                      row -> row.getString(1))
                  .orElseThrow())
          .isEqualTo("412.5 EUR a set, 2024-03, a shop");
      assertThat(
              Sql.list(
                  connection, "SELECT weight FROM report_weights", row -> row.getDouble("weight")))
          .containsExactly(0.4);
    }
    archive.undo();
    try (Connection connection = archive.ownReading()) {
      for (String table : List.of("entry", "result", "price", "report_weight", "draft", "model")) {
        assertThat(Sql.number(connection, "SELECT count(*) FROM " + table)).as(table).isZero();
      }
    }
  }

  @Test
  void draftsAreDecidedOnceAndGoWithTheirDelivery() {
    add(new Entry("Velmar Ostra 1", null, null, List.of(metres(30))));
    DraftRecord draft = archive.drafts().get(0);
    assertThat(draft.table()).isEqualTo(new DraftTable("Wet", 3, 9, 1, 4, "[{\"score\":0.8}]"));
    assertThat(draft.state()).isEqualTo(DraftRecord.State.OPEN);
    archive.decideDraft(draft.id(), 1, NOON);
    assertThat(archive.drafts().get(0).state()).isEqualTo(DraftRecord.State.TAKEN);
    assertThat(archive.drafts().get(0).chosen()).isEqualTo(1);
    assertThatThrownBy(() -> archive.decideDraft(draft.id(), null, NOON))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no open draft of number 1");
  }

  @Test
  void whatIsRetractedStaysSoWhenItsSourceIsReadAnew() {
    add(new Entry("Velmar Ostra 1", null, null, List.of(metres(30))));
    Retraction retraction = Retraction.ofTest("T1", "wrong tyres", NOW);
    archive.retract(retraction);
    archive.undo();
    add(new Entry("Velmar Ostra 1", null, null, List.of(metres(30))));
    assertThat(archive.retractions()).containsExactly(retraction);
    archive.retract(retraction.takenBack("right after all", NOW));
    assertThat(archive.retractions()).isEmpty();
    assertThat(archive.retractionHistory()).hasSize(2);
    assertThatThrownBy(() -> archive.retract(retraction.takenBack("again", NOW)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("stands retracted");
    assertThatThrownBy(() -> archive.retract(Retraction.ofTest("T9", "why", NOW)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("There is no test T9");
  }

  @Test
  void theNewestDecisionOnAPairOfTestsStands() {
    TestDecision same =
        new TestDecision("T2", "T1", TestDecision.Verdict.SAME, NOW, "the same cells");
    archive.decideTests(List.of(same));
    assertThat(archive.snapshot().testDecisions()).containsExactly(same);
    TestDecision apart = new TestDecision("T1", "T2", TestDecision.Verdict.APART, NOW, "");
    archive.decideTests(List.of(apart));
    assertThat(archive.testDecisions()).containsExactly(apart);
    archive.decideTests(List.of(new TestDecision("T1", "T2", TestDecision.Verdict.OPEN, NOW, "")));
    assertThat(archive.testDecisions()).isEmpty();
  }

  @Test
  void anAnswerIsKeptWithTheDeliveryItCameFrom() {
    add(new Entry("Velmar Ostra 1", null, null, List.of(metres(30))));
    KeptAnswer kept = archive.keep("first", "placings", "{}", "A sentence.", "{}", NOON);
    assertThat(kept.delivery()).isEqualTo(1);
    assertThat(archive.keptAnswers()).containsExactly(kept);
    assertThatThrownBy(() -> archive.keep("first", "tests", "{}", "Another.", "{}", NOON))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("kept as first already");
  }

  private static LoggedRun run(double distance) {
    return new LoggedRun(
        "wet-braking",
        1,
        "Velmar Ostra 1",
        LoggedRun.Role.CANDIDATE,
        1,
        80.0,
        20.0,
        distance,
        null,
        null,
        null,
        null,
        12.5,
        null,
        null,
        null);
  }

  @Test
  void aFrozenPlanAndAnEnteredLineNeverChange() throws SQLException {
    PlanBook plans = archive.plans();
    plans.save("spring", "{\"hours\":6}");
    plans.save("spring", "{\"hours\":8}");
    PlanRecord frozen = plans.freeze("spring", "{\"expected\":1}", "abc", NOON);
    assertThat(plans.all()).containsExactly(frozen);
    assertThat(frozen.plan()).isEqualTo("{\"hours\":8}");
    assertThatThrownBy(() -> plans.save("spring", "{}"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("was frozen");
    assertThatThrownBy(() -> plans.freeze("spring", "{}", "x", NOON)).isInstanceOf(Refusal.class);

    TrackRun first = plans.enter("spring", run(31.2), null, NOON);
    TrackRun second = plans.enter("spring", run(30.2), first.id(), NOON);
    assertThat(plans.runs("spring")).containsExactly(first, second);
    assertThat(second.corrects()).isEqualTo(first.id());
    assertThat(second.run()).isEqualTo(run(30.2));
    assertThatThrownBy(() -> plans.enter("spring", run(1), 99L, NOON))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no line 99");
    plans.abort("spring", "wet-handling", "rain", NOON);
    assertThat(plans.aborted("spring")).containsEntry("wet-handling", "rain");

    try (Connection connection = archive.ownWriting()) {
      for (String change :
          List.of(
              "UPDATE plan SET forecast = 'x'",
              "DELETE FROM plan",
              "UPDATE track_run SET distance_m = 1",
              "DELETE FROM track_run")) {
        assertThatThrownBy(() -> Sql.execute(connection, change))
            .as(change)
            .isInstanceOf(Refusal.class);
      }
    }
  }
}
