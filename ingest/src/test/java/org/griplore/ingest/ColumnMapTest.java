package org.griplore.ingest;

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
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnMapReader;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.TestReport;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a user says of columns")
class ColumnMapTest {
  private static final DisciplineCatalogue CATALOGUE = DisciplineCatalogue.standard();

  private Archive archive;
  private Intake intake;

  @BeforeEach
  void open(@TempDir Path folder) {
    archive = Archive.openOrCreate(folder.resolve("archive"));
    Clock clock = Clock.fixed(Instant.parse("2025-01-01T00:00:00Z"), ZoneOffset.UTC);
    intake = new Intake(archive, CATALOGUE, clock);
  }

  @AfterEach
  void close() {
    archive.close();
  }

  private Preview preview(String table, String map) {
    return intake.preview(source(table), new ReadOptions(Map.of(), false, map(map)));
  }

  private static Original source(String table) {
    return Original.of("table.csv", table.getBytes(StandardCharsets.UTF_8));
  }

  private static ColumnMap map(String json) {
    return ColumnMapReader.read(json.replace('\'', '"'), "map.json", CATALOGUE);
  }

  private static List<Entry> entries(Preview preview) {
    return preview.reports().stream().flatMap(report -> report.entries().stream()).toList();
  }

  private static Result only(Preview preview, int entry) {
    assertThat(entries(preview).get(entry).results()).hasSize(1);
    return entries(preview).get(entry).results().get(0);
  }

  @Test
  @DisplayName("makes a table of what nothing was recognised in")
  void unknownHeaders() {
    Preview preview =
        preview(
            "Kandidat;X1;X2\nOvrand One;101;7\nOvrand Two;105;8\n",
            "{'columns': [{'header': 'kandidat ', 'meaning': 'tyre'},"
                + " {'header': 'X1', 'meaning': 'wet-braking', 'unit': 'ft'},"
                + " {'column': 3, 'meaning': 'ignored'}]}");
    assertThat(only(preview, 0).value()).isEqualTo(101 * 0.3048);
    assertThat(only(preview, 0).unit()).isEqualTo(Unit.METRE);
    assertThat(preview.columns()).extracting(UnderstoodColumn::basis).containsOnly("as was said");
  }

  @Test
  @DisplayName("counts before a header that says otherwise")
  void overruled() {
    Preview preview =
        preview(
            "Tyre;Wet braking (m)\nOvrand One;101\nOvrand Two;105\n",
            "{'columns': [{'header': 'Wet braking (m)', 'meaning': 'dry-braking', 'unit': 'ft'}]}");
    assertThat(only(preview, 0).discipline()).isEqualTo("dry-braking");
    assertThat(only(preview, 0).value()).isEqualTo(101 * 0.3048);
  }

  @Test
  @DisplayName("keeps the header's unit when only the discipline is said")
  void headersUnit() {
    Preview preview =
        preview(
            "Tyre;Wet braking (ft)\nOvrand One;101\nOvrand Two;105\n",
            "{'columns': [{'column': 2, 'meaning': 'dry-braking'}]}");
    assertThat(only(preview, 0).value()).isEqualTo(101 * 0.3048);
  }

  @Test
  @DisplayName("decides a decimal mark that the figures leave open")
  void decimalMark() {
    String table = "Tyre;Wear (km)\nOvrand One;43,200\nOvrand Two;41,100\n";
    String column = "'columns': []";
    assertThat(only(preview(table, "{'decimal': 'point', " + column + "}"), 0).value())
        .isEqualTo(43200.0);
    assertThat(only(preview(table, "{'decimal': 'comma', " + column + "}"), 0).value())
        .isEqualTo(43.2);
  }

  @Test
  @DisplayName("decides the order of day and month")
  void dates() {
    String table = "Date: 06/07/2021\n\nTyre;Wear (km)\nOvrand One;43200\nOvrand Two;41100\n";
    Preview month = preview(table, "{'dates': 'month-first'}");
    assertThat(month.reports().get(0).details().date().text()).isEqualTo("2021-06-07");
    Preview day = preview(table, "{'dates': 'day-first'}");
    assertThat(day.reports().get(0).details().date().text()).isEqualTo("2021-07-06");
    assertThat(day.findings()).noneMatch(finding -> finding.found().contains("06/07"));
  }

  @Test
  @DisplayName("decides which way per cents run, and of what they are")
  void perCents() {
    String table = "Tyre;Wet braking\nOvrand One;108\nOvrand Two;116\n";
    String column = "{'columns': [{'column': 2, 'unit': '%s'%s}]}";
    Preview reference = preview(table, column.formatted("% of reference", ""));
    assertThat(only(reference, 0).unit()).isEqualTo(Unit.PERCENT_OF_REFERENCE);
    assertThat(only(reference, 0).value()).isEqualTo(108);
    Preview turned = preview(table, column.formatted("% of reference", ", 'better': 'low'"));
    assertThat(only(turned, 0).value()).isEqualTo(100 * 100 / 108.0);
    assertThat(only(turned, 0).rule()).contains("turned round as was said");
  }

  @Test
  @DisplayName("names the header row where another would be taken")
  void headerRow() {
    String table = "Tyre;Wet braking (ft)\nTyre;Wet braking (m)\nOvrand One;31\nOvrand Two;32\n";
    Preview preview = preview(table, "{'headerRow': 2}");
    assertThat(entries(preview))
        .extracting(Entry::model)
        .containsExactly("Ovrand One", "Ovrand Two");
    assertThat(only(preview, 0).value()).isEqualTo(31);
    assertThatThrownBy(() -> preview(table, "{'headerRow': 9}"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("headerRow")
        .hasMessageContaining("\"9\"");
  }

  @Test
  @DisplayName("is refused where it speaks of a column that is not there")
  void noSuchColumn() {
    assertThatThrownBy(
            () ->
                preview(
                    "Tyre;Wet braking (m)\nOvrand One;31\nOvrand Two;32\n",
                    "{'columns': [{'header': 'Nassbremsen', 'meaning': 'wet-braking'}]}"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("columns[0]")
        .hasMessageContaining("Nassbremsen")
        .hasMessageContaining("Tyre | Wet braking (m)");
  }

  @Test
  @DisplayName("is refused for notes and our own forms, whose columns are known")
  void ownForms() {
    assertThatThrownBy(
            () -> preview("# A test\n\n## Ovrand One\n- quiet\n", "{'decimal': 'comma'}"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("give no map");
  }

  @ParameterizedTest(name = "is refused as {0}")
  @ValueSource(
      strings = {
        "",
        "[]",
        "{",
        "{'colums': []}",
        "{'columns': {}}",
        "{'columns': [1]}",
        "{'columns': [{}]}",
        "{'columns': [{'meaning': 'tyre'}]}",
        "{'columns': [{'column': 0, 'meaning': 'tyre'}]}",
        "{'columns': [{'column': 'B', 'meaning': 'tyre'}]}",
        "{'columns': [{'column': 1, 'meaning': 'wet brakes'}]}",
        "{'columns': [{'column': 1, 'meaning': 'spread'}]}",
        "{'columns': [{'column': 1, 'meaning': 7}]}",
        "{'columns': [{'column': 1, 'meaning': 'tyre', 'unit': 'm'}]}",
        "{'columns': [{'column': 1, 'meaning': 'wet-braking', 'unit': 'dB(A)'}]}",
        "{'columns': [{'column': 1, 'meaning': 'wet-braking', 'unit': 'furlong'}]}",
        "{'columns': [{'column': 1, 'meaning': 'wet-braking', 'unit': 'm', 'better': 'low'}]}",
        "{'columns': [{'column': 1, 'unit': '% of best', 'better': 'left'}]}",
        "{'headerRow': 0}",
        "{'headerRow': '3'}",
        "{'decimal': ';'}",
        "{'dates': 'american'}"
      })
  void badMaps(String json) {
    assertThatThrownBy(() -> map(json))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("map.json")
        .hasMessageContaining("expected");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{}",
        "{'headerRow':3,'decimal':'comma','dates':'month-first'}",
        "{'columns':[{'column':2,'meaning':'place wet-braking'},{'header':'a','meaning':'overall',"
            + "'unit':'mark (1 best)'},{'header':'b','unit':'% of best','better':'low'}]}"
      })
  @DisplayName("is written as it is read")
  void roundTrip(String json) {
    assertThat(ColumnMapReader.text(map(json))).isEqualTo(json.replace('\'', '"'));
    assertThat(map(ColumnMapReader.pretty(map(json)))).isEqualTo(map(json));
  }

  /** Headers that are recognised, each with what a map says of it. */
  private static final List<List<String>> COLUMNS =
      List.of(
          List.of("Wet braking (m)", "wet-braking", "m", "25", "40"),
          List.of("Nassbremsen [ft]", "wet-braking", "ft", "80", "130"),
          List.of("Dry braking (m)", "dry-braking", "m", "33", "41"),
          List.of("Bruit extérieur (dB(A))", "exterior-noise", "dB(A)", "68", "74"),
          List.of("Rolling resistance (kg/t)", "rolling-resistance", "kg/t", "6", "11"),
          List.of("Wet handling (s)", "wet-handling", "s", "80", "95"),
          List.of("Komfort (Punkte)", "comfort", "points", "4", "10"),
          List.of("Place", "place overall", "", "1", "9"),
          List.of("Remark", "remark", "", "", ""));

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  @DisplayName("leads to what the right headers lead to")
  void asRightHeaders(long seed) {
    Random random = new Random(seed);
    List<List<String>> columns = new ArrayList<>(COLUMNS);
    Collections.shuffle(columns, random);
    columns = columns.subList(0, 3 + random.nextInt(4));
    if (columns.stream().noneMatch(column -> !column.get(2).isEmpty())) {
      columns = COLUMNS.subList(0, 3);
    }
    List<String> right = new ArrayList<>(List.of("Tyre"));
    List<String> odd = new ArrayList<>(List.of("Q0"));
    List<String> rules = new ArrayList<>(List.of("{'header': 'Q0', 'meaning': 'tyre'}"));
    for (List<String> column : columns) {
      odd.add("Q" + odd.size());
      right.add(column.get(0));
      String unit = column.get(2).isEmpty() ? "" : ", 'unit': '" + column.get(2) + "'";
      String which =
          random.nextBoolean()
              ? "'column': " + odd.size()
              : "'header': '" + odd.get(odd.size() - 1) + "'";
      rules.add("{" + which + ", 'meaning': '" + column.get(1) + "'" + unit + "}");
    }
    StringBuilder rows = new StringBuilder();
    for (int row = 0; row < 4; row++) {
      rows.append("Ovrand ").append("ABCD".charAt(row)).append("x");
      for (List<String> column : columns) {
        rows.append(';').append(cell(column, random));
      }
      rows.append('\n');
    }
    Preview byHeaders =
        intake.preview(source(String.join(";", right) + "\n" + rows), ReadOptions.NONE);
    Preview byMap =
        preview(
            String.join(";", odd) + "\n" + rows, "{'columns': [" + String.join(",", rules) + "]}");
    assertThat(byMap.reports()).isEqualTo(byHeaders.reports());
    assertThat(entries(byMap)).hasSize(4);
    assertThat(byMap.columns())
        .extracting(UnderstoodColumn::meaning, UnderstoodColumn::unit)
        .isEqualTo(
            byHeaders.columns().stream()
                .map(c -> org.assertj.core.groups.Tuple.tuple(c.meaning(), c.unit()))
                .toList());
    Preview byWrittenMap =
        intake.preview(
            source(String.join(";", right) + "\n" + rows),
            new ReadOptions(Map.of(), false, byHeaders.map(CATALOGUE)));
    List<TestReport> again = byWrittenMap.reports();
    assertThat(again)
        .as("by the map that tells what was understood")
        .isEqualTo(byHeaders.reports());
  }

  private static String cell(List<String> column, Random random) {
    if (column.get(3).isEmpty()) {
      return random.nextBoolean() ? "" : "quiet";
    }
    double low = Double.parseDouble(column.get(3));
    double high = Double.parseDouble(column.get(4));
    double value = low + (high - low) * random.nextDouble();
    return column.get(1).startsWith("place")
        ? String.valueOf(1 + random.nextInt(9))
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
