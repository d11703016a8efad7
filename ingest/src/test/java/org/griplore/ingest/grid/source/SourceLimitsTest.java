package org.griplore.ingest.grid.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.workbook.WorkbookBytes;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A small file cannot claim a large memory or much time, and nothing it holds is left out. */
class SourceLimitsTest {
  /** Seconds on a machine of its own; what this guards against would take minutes or for ever. */
  private static final Duration LONG_ENOUGH = Duration.ofMinutes(2);

  private static List<List<GridCell>> rows(String name, byte[] bytes) {
    Content content =
        assertTimeoutPreemptively(LONG_ENOUGH, () -> DocumentReader.read(name, bytes));
    assertThat(content).isInstanceOf(Content.Tables.class);
    return ((Content.Tables) content).grids().get(0).rows();
  }

  private static String refused(String name, byte[] bytes) {
    Throwable[] thrown = new Throwable[1];
    assertTimeoutPreemptively(
        LONG_ENOUGH,
        () -> {
          try {
            DocumentReader.read(name, bytes);
          } catch (Refusal refusal) {
            thrown[0] = refusal;
          }
        });
    assertThat(thrown[0]).as("a refusal of %s", name).isNotNull();
    return ((Refusal) thrown[0]).sentence();
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ZZZZZZ1", "XFE1", "A0", "A1048577", "A2147483647", "1A"})
  void aCellThatNoSheetHasIsDamage(String cell) {
    String rows = "<row><c r=\"%s\"><v>2</v></c></row>".formatted(cell);

    assertThat(refused("book.xlsx", WorkbookBytes.of(rows, "").zipped()))
        .startsWith("book.xlsx is a damaged or incomplete workbook: its xl/worksheets/sheet1.xml")
        .contains("names the cell " + cell + ", which no sheet has");
  }

  @Test
  void theLastCellOfASheetIsRead() {
    String rows = "<row r=\"1048576\"><c r=\"XFD1048576\"><v>2</v></c></row>";

    assertThat(rows("book.xlsx", WorkbookBytes.of(rows, "").zipped()))
        .containsExactly(List.of(new GridCell(1_048_576, 16_384, "2", 2.0, null)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1E400", "1E99999999", "1E999999999", "1E-99999999", "-1E999999999"})
  void aNumberThatNothingCanHaveIsText(String number) {
    String rows = "<row r=\"1\"><c r=\"A1\" s=\"1\"><v>%s</v></c></row>".formatted(number);
    byte[] book = WorkbookBytes.of(rows, "", "0.0%").zipped();

    GridCell cell = rows("book.xlsx", book).get(0).get(0);

    assertThat(cell.number()).isNull();
    assertThat(cell.text()).hasSizeLessThan(40);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "7", "2000000000"})
  void aSharedTextThatIsMissingIsDamageNotAnEmptyCell(String index) {
    String rows = "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>%s</v></c></row>".formatted(index);
    byte[] none = WorkbookBytes.of(rows, "").zipped();
    byte[] empty = WorkbookBytes.of(rows, "").with("xl/sharedStrings.xml", "<sst/>").zipped();

    assertThat(refused("book.xlsx", empty)).contains("damaged or incomplete").contains("holds 0");
    if (!index.equals("2000000000")) {
      assertThat(refused("book.xlsx", none)).contains("damaged or incomplete");
    }
  }

  @Test
  void aDateOfTheStrictFormIsRead() {
    String rows = "<row r=\"1\"><c r=\"A1\" t=\"d\"><v>2021-05-03</v></c></row>";

    assertThat(rows("book.xlsx", WorkbookBytes.of(rows, "").zipped()).get(0))
        .containsExactly(
            new GridCell(1, 1, "2021-05-03", null, java.time.LocalDate.of(2021, 5, 3)));
  }

  @Test
  void jsonNumbersBeyondAllMeasureAreTexts() {
    List<GridCell> row = rows("a.json", text("[{\"a\": 1e999, \"b\": 31.20}]")).get(1);

    assertThat(row)
        .containsExactly(
            new GridCell(2, 1, "1e999", null, null), new GridCell(2, 2, "31.20", 31.2, null));
  }

  @Test
  void millionsOfJsonValuesAreRefused() {
    byte[] json = new byte[11_000_000];
    for (int i = 0; i < json.length; i++) {
      json[i] = (byte) (i % 2 == 0 ? ',' : '1');
    }
    json[0] = '[';
    json[1] = '[';
    json[2] = '1';
    Arrays.fill(json, json.length - 2, json.length, (byte) ']');

    assertThat(refused("a.json", json)).startsWith("a.json holds more than 5000000 cells");
  }

  @Test
  void millionsOfCellsAreRefused() {
    assertThat(refused("a.csv", text("1;2;3;4;5;6;7;8;9;10\n".repeat(500_001))))
        .startsWith("a.csv holds more than 5000000 cells");
  }

  @Test
  void notesOfMillionsOfLinesAreRefused() {
    assertThat(refused("a.txt", text("a\n".repeat(600_000)))).contains("too long for notes");
  }

  @Test
  void whatCannotBeSeenIsNoText() {
    String table = "Tyre;Wet\u00a0;Dry\nA;\u202f31,2;\u00a0\nB;\u200b;\ufeff3\n\u001a";

    assertThat(rows("a.csv", text(table)))
        .containsExactly(
            List.of(GridCell.of(1, 1, "Tyre"), GridCell.of(1, 2, "Wet"), GridCell.of(1, 3, "Dry")),
            List.of(GridCell.of(2, 1, "A"), GridCell.of(2, 2, "31,2")),
            List.of(GridCell.of(3, 1, "B"), GridCell.of(3, 3, "3")));
  }
}
