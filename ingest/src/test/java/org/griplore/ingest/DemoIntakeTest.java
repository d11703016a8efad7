package org.griplore.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.grid.text.RecordReader;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.FindingRecord;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads the whole demo archive and compares every figure with what its generator says it holds. */
class DemoIntakeTest {
  private static final Path DEMO = Path.of("..", "demo-archive");

  @TempDir static Path folder;
  private static Archive archive;
  private static List<AddedSource> added;

  @BeforeAll
  static void addAll() {
    archive = Archive.openOrCreate(folder);
    added = intake().add(List.of(DEMO), ReadOptions.NONE, (name, done, total) -> {});
  }

  @AfterAll
  static void close() {
    archive.close();
  }

  private static Intake intake() {
    return new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
  }

  private static List<Map<String, String>> csv(String name) throws IOException {
    List<Map<String, String>> rows = new ArrayList<>();
    try (RecordReader records =
        new RecordReader(
            name, Files.newBufferedReader(Path.of("src/test/resources/demo", name)), ',')) {
      records.next();
      List<String> header = new ArrayList<>();
      for (int i = 0; i < records.count(); i++) {
        header.add(records.field(i));
      }
      while (records.next()) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
          row.put(header.get(i), records.field(i));
        }
        rows.add(row);
      }
    }
    return rows;
  }

  @Test
  void everyFileIsTaken() {
    assertThat(added)
        .allSatisfy(source -> assertThat(source.refusal()).as("%s", source.name()).isNull());
    assertThat(added)
        .filteredOn(s -> s.outcome().status() == AdditionOutcome.Status.UNCHANGED)
        .extracting(AddedSource::name)
        .containsExactly("Kopie von Ergebnisse_195-65R15.csv");
  }

  @Test
  void everyResultIsWhatTheGeneratorSays() throws IOException {
    Map<String, String> keys = keys();
    Map<String, String> read = figures();
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (Map<String, String> row : csv("expected-results.csv")) {
      String key = keys.getOrDefault(row.get("test"), row.get("test"));
      String found = read.remove(key + "|" + row.get("model") + "|" + row.get("discipline"));
      String wanted = expected(row);
      compared++;
      if (!wanted.equals(found)) {
        wrong.add(row + " -> " + found);
      }
    }
    assertThat(wrong).as("%d compared", compared).isEmpty();
  }

  /** Tests whose files give no key: known by date and title. */
  private static Map<String, String> keys() throws IOException {
    Map<String, String> keys = new HashMap<>();
    for (Map<String, String> test : csv("expected-tests.csv")) {
      if (test.get("key_given").equals("no")) {
        keys.put(
            test.get("test"),
            test.get("date") + "-" + HeaderKey.of(test.get("title")).replace(' ', '-'));
      }
    }
    return keys;
  }

  private static String expected(Map<String, String> row) {
    return number(row.get("value")) + " " + row.get("unit") + " " + row.get("place");
  }

  private static String number(String text) {
    return text.isEmpty()
        ? ""
        : String.format(java.util.Locale.ROOT, "%.6g", Double.parseDouble(text));
  }

  private static Map<String, String> figures() {
    Snapshot snapshot = archive.snapshot();
    Map<String, String> figures = new HashMap<>();
    for (int i = 0; i < snapshot.results().count(); i++) {
      int entry = snapshot.results().entry()[i];
      double value = snapshot.results().value()[i];
      int place = snapshot.results().place()[i];
      figures.put(
          snapshot.tests().get(snapshot.entries().test()[entry]).key()
              + "|"
              + snapshot.models().get(snapshot.entries().model()[entry]).name()
              + "|"
              + snapshot.disciplines().get(snapshot.results().discipline()[i]),
          (Double.isNaN(value) ? "" : String.format(java.util.Locale.ROOT, "%.6g", value))
              + " "
              + unit(snapshot, snapshot.results().unit()[i])
              + " "
              + (place == 0 ? "" : place));
    }
    return figures;
  }

  /** Prices keep the currency they are given in; the generator says only that it is one. */
  private static String unit(Snapshot snapshot, int unit) {
    if (unit < 0) {
      return "";
    }
    String symbol = snapshot.units().get(unit);
    return Unit.ofSymbol(symbol).orElseThrow().dimension() == Dimension.CURRENCY
        ? "currency"
        : symbol;
  }

  @Test
  void nothingIsLeftUnreadThatHoldsAFigure() {
    assertThat(archive.findings())
        .extracting(FindingRecord::finding)
        .filteredOn(finding -> finding.kind() == Finding.Kind.NOT_READ)
        .extracting(Finding::found)
        .containsOnly("DNF");
  }

  @Test
  void noTyreIsTakenForWornWhoseFileDoesNotSaySo() {
    assertThat(archive.snapshot().entries().state())
        .allSatisfy(state -> assertThat(state.wear()).isEqualTo(TyreState.Wear.NEW));
  }

  @Test
  void aSecondReadingChangesNothing() {
    long stamp = archive.stamp();
    List<AddedSource> again =
        intake().add(List.of(DEMO), ReadOptions.NONE, (name, done, total) -> {});
    assertThat(again)
        .allSatisfy(
            source ->
                assertThat(source.outcome().status()).isEqualTo(AdditionOutcome.Status.UNCHANGED));
    assertThat(archive.stamp()).isEqualTo(stamp);
  }

  /** Every sentence that the demo archive brings has a code of its own: none is stored as it is. */
  @Test
  void sentencesAreStoredAsCodes() throws SQLException {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("archive.db"));
        Statement statement = connection.createStatement();
        ResultSet told =
            statement.executeQuery(
                "SELECT expected_parameters FROM findings WHERE expected = 'told' UNION"
                    + " SELECT remedy_parameters FROM findings WHERE remedy = 'told' UNION"
                    + " SELECT parameters FROM rules WHERE code = 'told' UNION"
                    + " SELECT parameters FROM result_steps WHERE code = 'told' UNION"
                    + " SELECT label_parameters FROM result_steps WHERE label = 'told' UNION"
                    + " SELECT parameters FROM reduction_accounts WHERE code = 'told' UNION"
                    + " SELECT parameters FROM reduced_set_accounts WHERE code = 'told'")) {
      List<String> sentences = new ArrayList<>();
      while (told.next()) {
        sentences.add(told.getString(1));
      }
      assertThat(sentences).isEmpty();
    }
  }
}
