package org.griplore.ingest.grid.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFClientAnchor;
import org.apache.poi.hssf.usermodel.HSSFComment;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.ingest.grid.source.GridView;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks of other forms than XLSX: binary, OpenDocument packed and flat, XML of Excel 2003. */
class OtherWorkbooksTest {
  private static final String OFFICE =
      "xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
          + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
          + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
          + " xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\""
          + " xmlns:number=\"urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0\""
          + " xmlns:fo=\"urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0\"";

  private static Content.Tables read(byte[] bytes) {
    return (Content.Tables) DocumentReader.read("book", bytes);
  }

  private static List<String> rows(Grid grid) {
    return grid.rows().stream().map(GridView::row).toList();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] xls() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      HSSFSheet wet = book.createSheet("Wet");
      HSSFRow head = wet.createRow(1);
      HSSFFont raised = book.createFont();
      raised.setTypeOffset(HSSFFont.SS_SUPER);
      HSSFRichTextString name = new HSSFRichTextString("Kelt 21");
      name.applyFont(6, 7, raised);
      head.createCell(0).setCellValue(name);
      HSSFCell figure = head.createCell(1);
      figure.setCellValue(31.25);
      HSSFCellStyle metres = book.createCellStyle();
      metres.setDataFormat(book.createDataFormat().getFormat("0.0\" m\""));
      figure.setCellStyle(metres);
      HSSFFont line = book.createFont();
      line.setStrikeout(true);
      HSSFCellStyle struck = book.createCellStyle();
      struck.setFont(line);
      HSSFCell taken = head.createCell(2);
      taken.setCellValue(33.5);
      taken.setCellStyle(struck);
      HSSFComment comment =
          wet.createDrawingPatriarch()
              .createComment(new HSSFClientAnchor(0, 0, 0, 0, (short) 3, 3, (short) 5, 6));
      comment.setString(new HSSFRichTextString("invalid:\nsensor iced up"));
      taken.setCellComment(comment);
      wet.addMergedRegion(new CellRangeAddress(0, 0, 0, 2));
      wet.createRow(0).createCell(0).setCellValue("Summer test");
      wet.createRow(3).createCell(1).setCellValue(1);
      wet.getRow(3).setZeroHeight(true);
      wet.setColumnHidden(2, true);
      book.createSheet("Raw").createRow(0).createCell(0).setCellValue("x");
      book.setSheetHidden(1, true);
      book.write(bytes);
    }
    return bytes.toByteArray();
  }

  @Test
  void aBinaryWorkbookIsReadWithWhatItStrikesHidesAndNotes() throws IOException {
    List<Grid> grids = read(xls()).grids();
    Grid wet = grids.get(0);

    assertThat(rows(wet))
        .containsExactly(
            "1|1:Summer test",
            "2|1:Kelt 2 ^1|2:31.25=31.25|3:33.5=33.5 struck (invalid: sensor iced up)",
            "4|2:1=1.0");
    GridCell figure = wet.rows().get(1).get(1);
    assertThat(figure.formatUnit()).isEqualTo("m");
    assertThat(figure.formatDecimals()).isEqualTo(1);
    assertThat(wet.hiddenRows()).containsExactly(4);
    assertThat(wet.hiddenColumns()).containsExactly(3);
    assertThat(wet.merges()).containsExactly(new Grid.Merge(1, 1, 1, 3));
    assertThat(wet.shows(figure)).isTrue();
    assertThat(wet.shows(wet.rows().get(1).get(2))).isFalse();
    assertThat(grids.get(1).hidden()).isTrue();
  }

  @Test
  void aBinaryWorkbookWithAPasswordIsRefusedInOneSentence() throws IOException {
    byte[] locked;
    Biff8EncryptionKey.setCurrentUserPassword("secret");
    try (HSSFWorkbook book = new HSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      book.createSheet("Wet").createRow(0).createCell(0).setCellValue("x");
      book.write(out);
      locked = out.toByteArray();
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }

    assertThatThrownBy(() -> read(locked))
        .isInstanceOf(Refusal.class)
        .hasMessage("book is a workbook with a password: save it without one.");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 20, 50, 80, 90})
  void aTruncatedBinaryWorkbookIsOneSentence(int perCent) throws IOException {
    byte[] whole = xls();
    byte[] part = Arrays.copyOf(whole, Math.max(16, whole.length * perCent / 100));

    assertThatThrownBy(() -> read(part))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("damaged or incomplete");
  }

  private static String sheet(String rows) {
    return "<office:automatic-styles>"
        + "<number:number-style style:name=\"N1\"><number:number number:decimal-places=\"1\"/><number:text> m</number:text></number:number-style>"
        + "<style:style style:name=\"c1\" style:family=\"table-cell\" style:data-style-name=\"N1\"/>"
        + "<style:style style:name=\"c2\" style:family=\"table-cell\"><style:text-properties style:text-line-through-style=\"solid\"/></style:style>"
        + "<style:style style:name=\"up\" style:family=\"text\"><style:text-properties style:text-position=\"super 58%\"/></style:style>"
        + "<style:style style:name=\"off\" style:family=\"table\"><style:table-properties table:display=\"false\"/></style:style>"
        + "</office:automatic-styles><office:body><office:spreadsheet>"
        + rows
        + "</office:spreadsheet></office:body>";
  }

  private static final String CELLS =
      "<table:table table:name=\"Wet\"><table:table-column/><table:table-column table:visibility=\"collapse\" table:number-columns-repeated=\"2\"/>"
          + "<table:table-row table:number-rows-repeated=\"3\"><table:table-cell table:number-columns-repeated=\"1024\"/></table:table-row>"
          + "<table:table-row table:visibility=\"filter\"><table:table-cell office:value-type=\"string\"><text:p>Kelt 2<text:span text:style-name=\"up\">1</text:span></text:p><office:annotation><text:p>invalid</text:p></office:annotation></table:table-cell>"
          + "<table:table-cell table:style-name=\"c1\" office:value-type=\"float\" office:value=\"31.25\"><text:p>31.3 m</text:p></table:table-cell>"
          + "<table:table-cell table:style-name=\"c2\" office:value-type=\"percentage\" office:value=\"0.953\" table:number-columns-repeated=\"2\"><text:p>95%</text:p></table:table-cell>"
          + "<table:table-cell office:value-type=\"date\" office:date-value=\"2021-06-14\"/><table:table-cell office:value-type=\"time\" office:time-value=\"PT00H01M23.4S\"/>"
          + "<table:table-cell table:formula=\"of:=[.B4]*2\"/></table:table-row>"
          + "<table:table-row table:number-rows-repeated=\"1048000\"><table:table-cell table:number-columns-repeated=\"16384\"/></table:table-row></table:table>"
          + "<table:table table:name=\"Raw\" table:style-name=\"off\"><table:table-row><table:table-cell office:value-type=\"string\" table:number-columns-spanned=\"2\"><text:p>a</text:p><text:p>b<text:s text:c=\"2\"/>c</text:p></table:table-cell></table:table-row></table:table>";

  private static byte[] ods(String rows) {
    return WorkbookBytes.empty()
        .with("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        .with(
            "content.xml",
            "<office:document-content " + OFFICE + ">" + sheet(rows) + "</office:document-content>")
        .zipped();
  }

  private static byte[] fods(String rows) {
    return utf8(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document "
            + OFFICE
            + ">"
            + sheet(rows)
            + "</office:document>");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void anOpenDocumentWorkbookIsReadPackedAndFlat(boolean packed) {
    Content.Tables tables = read(packed ? ods(CELLS) : fods(CELLS));
    Grid wet = tables.grids().get(0);

    assertThat(rows(wet))
        .containsExactly(
            "4|1:Kelt 2 ^1 (invalid)|2:31.25=31.25|3:95.3%=0.953 struck|4:95.3%=0.953 struck"
                + "|5:2021-06-14=2021-06-14|6:1:23.4|7:of:=[.B4]*2");
    assertThat(wet.rows().get(0).get(1).formatUnit()).isEqualTo("m");
    assertThat(wet.hiddenRows()).containsExactly(4);
    assertThat(wet.hiddenColumns()).containsExactlyInAnyOrder(2, 3);
    assertThat(tables.grids().get(1).hidden()).isTrue();
    assertThat(rows(tables.grids().get(1))).containsExactly("1|1:a\nb  c");
    assertThat(tables.findings())
        .extracting(finding -> finding.cell().column() + " " + finding.remedy())
        .containsExactly("7 open the workbook, save it and add it again");
  }

  @Test
  void cellsRepeatedWithoutEndAreCountedBeforeTheyAreMade() {
    String bomb =
        "<table:table table:name=\"W\"><table:table-row table:number-rows-repeated=\"1000000\"><table:table-cell office:value-type=\"float\" office:value=\"1\" table:number-columns-repeated=\"16000\"/></table:table-row></table:table>";

    assertThatThrownBy(() -> read(ods(bomb)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("more than 5000000 cells");
  }

  @Test
  void anOpenDocumentFileWithAPasswordIsRefusedInOneSentence() {
    byte[] locked =
        WorkbookBytes.empty()
            .with("content.xml", "\u0000\u0001")
            .with("META-INF/manifest.xml", "<manifest><encryption-data/></manifest>")
            .zipped();

    assertThatThrownBy(() -> read(locked))
        .isInstanceOf(Refusal.class)
        .hasMessage("book is an OpenDocument file with a password: save it without one.");
  }

  private static final String EXCEL_2003 =
      """
      <?xml version="1.0"?><?mso-application progid="Excel.Sheet"?>
      <Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet" xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet" xmlns:x="urn:schemas-microsoft-com:office:excel" xmlns:html="http://www.w3.org/TR/REC-html40">
      <Styles><Style ss:ID="m"><NumberFormat ss:Format="0.0&quot; m&quot;"/></Style><Style ss:ID="x"><Font ss:StrikeThrough="1"/></Style></Styles>
      <Worksheet ss:Name="Wet"><Table><Column ss:Index="3" ss:Hidden="1"/>
      <Row ss:Index="2"><Cell ss:MergeAcross="1"><Data ss:Type="String">Model</Data></Cell><Cell><Data ss:Type="DateTime">2021-06-14T00:00:00.000</Data></Cell></Row>
      <Row ss:Hidden="1"><Cell><ss:Data ss:Type="String">Kelt 2<html:Sup>1</html:Sup></ss:Data><Comment><ss:Data>invalid</ss:Data></Comment></Cell><Cell ss:Index="4" ss:StyleID="m"><Data ss:Type="Number">31.25</Data></Cell><Cell ss:StyleID="x"><Data ss:Type="Number">2</Data></Cell><Cell ss:Formula="=RC[-1]*2"/></Row>
      </Table></Worksheet>
      <Worksheet ss:Name="Raw"><Table><Row><Cell><Data ss:Type="String">a</Data></Cell></Row></Table><WorksheetOptions xmlns="urn:schemas-microsoft-com:office:excel"><Visible>SheetHidden</Visible></WorksheetOptions></Worksheet>
      </Workbook>
      """;

  @Test
  void aWorkbookAsXmlOfExcel2003IsRead() {
    Content.Tables tables = read(utf8(EXCEL_2003));
    Grid wet = tables.grids().get(0);

    assertThat(rows(wet))
        .containsExactly(
            "2|1:Model|3:2021-06-14=2021-06-14",
            "3|1:Kelt 2 ^1 (invalid)|4:31.25=31.25|5:2=2.0 struck|6:=RC[-1]*2");
    assertThat(wet.rows().get(1).get(1).formatUnit()).isEqualTo("m");
    assertThat(wet.hiddenRows()).containsExactly(3);
    assertThat(wet.hiddenColumns()).containsExactly(3);
    assertThat(wet.merges()).containsExactly(new Grid.Merge(2, 1, 2, 2));
    assertThat(tables.grids().get(1).hidden()).isTrue();
    assertThat(tables.findings()).hasSize(1);
  }

  @Test
  void xmlThatBreaksOffOrReachesOutsideIsRefused() {
    byte[] cut = utf8(EXCEL_2003.substring(0, EXCEL_2003.length() / 2));
    byte[] outside =
        utf8(
            EXCEL_2003
                .replace(
                    "<Workbook",
                    "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><Workbook")
                .replace("Model", "&e;"));

    assertThatThrownBy(() -> read(cut)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> read(outside))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("damaged or incomplete workbook");
  }
}
