package org.griplore.ingest.grid.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.ingest.grid.source.GridView;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class XlsxReaderTest {
  private static List<Grid> read(byte[] workbook) {
    return ((Content.Tables) DocumentReader.read("book.csv", workbook)).grids();
  }

  private static String cell(String attributes, String inside, String... formats) {
    String row = "<row r=\"1\"><c r=\"A1\" %s>%s</c></row>".formatted(attributes, inside);
    List<List<GridCell>> rows = read(WorkbookBytes.of(row, "", formats).zipped()).get(0).rows();
    return rows.isEmpty() ? "" : GridView.row(rows.get(0));
  }

  private static byte[] saved() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "archive", "1.0")) {
      Worksheet wet = book.newWorksheet("Wet");
      wet.value(0, 0, "Summer test 2021");
      wet.range(0, 0, 0, 3).merge();
      wet.value(1, 0, "Date");
      wet.value(1, 1, LocalDate.of(2021, 6, 14));
      wet.style(1, 1).format("dd.mm.yyyy").set();
      wet.value(3, 0, "Model");
      wet.value(3, 1, "Braking");
      wet.range(3, 1, 3, 2).merge();
      wet.value(4, 1, "wet");
      wet.value(4, 2, "dry");
      wet.value(5, 0, "Kelt 2");
      wet.value(5, 1, 0.1 + 0.2);
      wet.value(5, 2, 0.953);
      wet.style(5, 2).format("0.0%").set();
      wet.value(6, 0, "Kelt 3");
      wet.value(6, 3, true);
      wet.hideRow(6);
      Worksheet raw = book.newWorksheet("Raw");
      raw.value(0, 0, "Kelt 2");
      raw.setVisibilityState(VisibilityState.HIDDEN);
    }
    return bytes.toByteArray();
  }

  @Test
  void sheetsAreReadWithTheirMergesAndWhatTheyHide() throws IOException {
    List<Grid> grids = read(saved());
    Grid wet = grids.get(0);

    assertThat(wet.rows().stream().map(GridView::row))
        .containsExactly(
            "1|1:Summer test 2021",
            "2|1:Date|2:2021-06-14=2021-06-14",
            "4|1:Model|2:Braking",
            "5|2:wet|3:dry",
            "6|1:Kelt 2|2:0.3=0.30000000000000004|3:95.3%=0.953",
            "7|1:Kelt 3|4:true");
    assertThat(wet.merges())
        .containsExactlyInAnyOrder(new Grid.Merge(1, 1, 1, 4), new Grid.Merge(4, 2, 4, 3));
    assertThat(wet.hiddenRows()).containsExactly(7);
    assertThat(grids).extracting(Grid::name).containsExactly("Wet", "Raw");
    assertThat(grids).extracting(Grid::hidden).containsExactly(false, true);
  }

  @Test
  void aMergedHeadingIsSpreadOverItsColumnsOnly() throws IOException {
    List<List<GridCell>> rows = read(saved()).get(0).spreadAcross().rows();

    assertThat(GridView.row(rows.get(0)))
        .isEqualTo("1|1:Summer test 2021|2:Summer test 2021|3:Summer test 2021|4:Summer test 2021");
    assertThat(GridView.row(rows.get(2))).isEqualTo("4|1:Model|2:Braking|3:Braking");
    assertThat(GridView.row(rows.get(3))).isEqualTo("5|2:wet|3:dry");
  }

  @Test
  void aTitleMergedOverTheWholeSheetIsSpreadNoWiderThanItsCells() {
    Grid grid =
        read(WorkbookBytes.of(
                    "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Title</t></is></c></row><row r=\"2\"><c r=\"B2\"><v>1</v></c></row>",
                    "<mergeCells><mergeCell ref=\"A1:XFD1\"/></mergeCells>")
                .zipped())
            .get(0);

    assertThat(GridView.row(grid.spreadAcross().rows().get(0))).isEqualTo("1|1:Title|2:Title");
  }

  /** What a workbook stores, its number format, and the cell that a person sees. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0.95312 | 0.0%                     | 95.312%=0.95312
          31.199999999999999 | 0.00          | 31.2=31.2
          1E-3    | General                  | 0.001=0.001
          44361   | 14                       | 2021-06-14=2021-06-14
          44361.75 | 22                      | 2021-06-14=2021-06-14
          44361   | d. mmmm yyyy             | 2021-06-14=2021-06-14
          44361   | [$-407]TT.MM.YYYY        | 2021-06-14=2021-06-14
          44361.5 | yyyy-mm-dd hh:mm:ss.000  | 2021-06-14=2021-06-14
          1       | yyyy-mm-dd               | 1900-01-01=1900-01-01
          59      | yyyy-mm-dd               | 1900-02-28=1900-02-28
          60      | yyyy-mm-dd               | 60=60.0
          61      | yyyy-mm-dd               | 1900-03-01=1900-03-01
          1E15    | yyyy-mm-dd               | 1000000000000000=1.0E15
          44361   | "dry" 0.0                | 44361=44361.0
          44361   | [Red]#,##0 "days"        | 44361=44361.0
          0.000965277777777778 | mm:ss.0     | 1:23.4
          0.000965277777777778 | [m]:ss.000  | 1:23.4
          0.395833333333333 | hh:mm          | 9:30:00
          """)
  void numbersAreReadAsTheirFormatShowsThem(String stored, String format, String shown) {
    assertThat(cell("s=\"1\"", "<v>" + stored + "</v>", format)).isEqualTo("1|1:" + shown);
  }

  /** Serial dates of both systems: ECMA-376 part 1, 18.17.4.1 (day 1 is 1900-01-01; 1904-01-02). */
  @Test
  void datesCountFrom1904WhereTheWorkbookSaysSo() {
    WorkbookBytes book =
        WorkbookBytes.of("<row r=\"1\"><c r=\"A1\" s=\"1\"><v>42899</v></c></row>", "", "14");
    book.with(
        "xl/workbook.xml",
        book.part("xl/workbook.xml").replace("<workbookPr/>", "<workbookPr date1904=\"1\"/>"));

    assertThat(read(book.zipped()).get(0).rows().get(0).get(0).date())
        .isEqualTo(LocalDate.of(2021, 6, 14));
  }

  @Test
  void formulasGiveTheirStoredValues() {
    assertThat(cell("", "<f>A2/3</f><v>31.25</v>")).isEqualTo("1|1:31.25=31.25");
    assertThat(cell("t=\"str\"", "<f>T(A2)</f><v>12</v>")).isEqualTo("1|1:12");
    assertThat(cell("t=\"b\"", "<f>TRUE()</f><v>1</v>")).isEqualTo("1|1:true");
    assertThat(cell("t=\"e\"", "<f>1/0</f><v>#DIV/0!</v>")).isEqualTo("1|1:#DIV/0!");
    assertThat(cell("t=\"e\"", "<v>#N/A</v>")).isEqualTo("1|1:#N/A");
    assertThat(cell("", "<f>B1*2</f>")).isEqualTo("1|1:=B1*2");
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 10, 50, 90, 99})
  void aTruncatedWorkbookIsOneSentence(int perCent) throws IOException {
    byte[] whole = saved();
    byte[] part = Arrays.copyOf(whole, Math.max(8, whole.length * perCent / 100));

    assertThatThrownBy(() -> read(part))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "book.csv is a damaged or incomplete workbook or packed file: save it anew and add it"
                + " again.");
  }

  @Test
  void anExternalEntityIsNeverRead(@TempDir Path folder) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "kept-private");
    String doctype = "<!DOCTYPE x [<!ENTITY e SYSTEM \"%s\">]>".formatted(secret.toUri());
    String row = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>a&e;b</t></is></c></row>";
    WorkbookBytes book = WorkbookBytes.of(row, "");
    book.with("xl/worksheets/sheet1.xml", doctype + book.part("xl/worksheets/sheet1.xml"));

    assertThatThrownBy(() -> read(book.zipped()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("damaged or incomplete workbook")
        .hasMessageNotContaining("kept-private");
  }

  @Test
  void entitiesThatGrowAreNotExpanded() {
    StringBuilder doctype = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 \"ha\">");
    for (int i = 1; i < 30; i++) {
      doctype.append("<!ENTITY a%d \"&a%d;&a%d;\">".formatted(i, i - 1, i - 1));
    }
    doctype.append("]>");
    String row = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&a29;</t></is></c></row>";
    WorkbookBytes book = WorkbookBytes.of(row, "");
    book.with("xl/worksheets/sheet1.xml", doctype + book.part("xl/worksheets/sheet1.xml"));

    assertThatThrownBy(() -> read(book.zipped())).isInstanceOf(Refusal.class);
  }

  @Test
  void aZipBombIsRefusedWhileUnpacking() {
    String zeros = "0".repeat(64 << 20);
    byte[] bomb = WorkbookBytes.of("", "").with("xl/media/picture.bin", zeros).zipped();

    assertThat(bomb.length).isLessThan(1 << 20);
    assertThatThrownBy(() -> read(bomb))
        .isInstanceOf(Refusal.class)
        .hasMessage("book.csv would unpack to more than 200 times its size: it is not read.");
  }

  @Test
  void tooManyPartsAreRefused() {
    WorkbookBytes book = WorkbookBytes.of("", "");
    for (int i = 0; i < 2001; i++) {
      book.with("xl/media/" + i, "x");
    }

    assertThatThrownBy(() -> read(book.zipped()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("more than 2000 parts");
  }

  @ParameterizedTest
  @CsvSource({
    "ppt/presentation.xml, a presentation: copy its tables into a workbook",
    "xl/workbook.bin, a binary workbook (XLSB): save it as XLSX"
  })
  void otherPackedFilesAreNamed(String part, String what) {
    byte[] zip = WorkbookBytes.empty().with(part, "x").zipped();

    assertThatThrownBy(() -> read(zip))
        .isInstanceOf(Refusal.class)
        .hasMessage("book.csv is " + what + ".");
  }

  @ParameterizedTest
  @ValueSource(strings = {"<mergeCell/>", "<mergeCell ref=\"nonsense\"/>", "<mergeCell ref=\"\"/>"})
  void aMergeWithoutAPlaceIsDamage(String merge) {
    byte[] book = WorkbookBytes.of("", "<mergeCells>" + merge + "</mergeCells>").zipped();

    assertThatThrownBy(() -> read(book))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("damaged or incomplete workbook");
  }
}
