package org.griplore.ui.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.Figure;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.SourceReference;
import org.junit.jupiter.api.Test;

/** One invented answer with every kind of column, in every format. */
class RenderingsTest {
  private record Inner(String test, Integer place) {}

  private record Cut(
      Double value, Integer place, Double delta, String deltaUnit, Double low, Double high)
      implements Figure {
    @Override
    public Long result() {
      return null;
    }

    @Override
    public String mark() {
      return "\u2248\u00a0";
    }
  }

  private record Line(
      String name, String date, int count, Double share, Double step, Cut cut, boolean flag) {}

  private static final List<Column<Cut>> PARTS =
      List.of(
          Column.number("value", "value", Format.NUMBER, 1, Cut::value),
          Column.number("delta", "difference", Format.DELTA, 1, Cut::delta).in("%"),
          Column.of("place", "place", Format.PLACE, Cut::place));

  private static final List<Column<Line>> COLUMNS =
      List.of(
          Column.of("model", "Model", Format.MODEL, Line::name),
          Column.of("date", "Date", Format.DATE, Line::date),
          Column.of("count", "Tests", Format.COUNT, Line::count),
          Column.of("share", "Share", Format.SHARE, Line::share),
          Column.number("step", "Step", Format.DELTA, 1, Line::step),
          Column.figure("wet-braking", "Wet braking", 1, PARTS, Line::cut).in("m"),
          Column.of("flag", "Tied", Format.FLAG, Line::flag),
          Column.rows(
              "places",
              "Places",
              List.of(
                  Column.<Inner>of("test", "Test", Format.TEST, Inner::test),
                  Column.<Inner>of("place", "Place", Format.PLACE, Inner::place)),
              line -> List.of(new Inner("t-1", 2))));

  private static Answer<Line> answer(String name) {
    return Answer.to(
            new Inquiry("table", "How do <tyres> compare?", Map.of("models", List.of(name))))
        .summary("Two & more.")
        .columns(COLUMNS)
        .rows(
            List.of(
                new Line(
                    name,
                    "2021-05-04",
                    3,
                    0.25,
                    -1.2,
                    new Cut(31.24, 2, -1.0, "%", -2.0, 0.04),
                    true),
                new Line("B", "2021", 0, null, null, null, false)))
        .excluded(List.of(new Exclusion("places without values", 4)))
        .caveats(List.of("Mind the \"gap\"."))
        .sources(
            List.of(
                new SourceReference(7, "A title", "own", "2021-05-04", "t-1", "file.csv"),
                new SourceReference(9, "No day", null, null, "t-2", "other.csv")))
        .build();
  }

  private static byte[] bytes(OutputFormat format, String name) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    format.write(answer(name), out, TerminalStyle.PLAIN);
    return out.toByteArray();
  }

  private static String text(OutputFormat format, String name) {
    return format.text(answer(name), TerminalStyle.PLAIN);
  }

  @Test
  void codesInATextSteerNoTerminalAndHideNoName() {
    for (OutputFormat format :
        List.of(OutputFormat.TABLE, OutputFormat.MARKDOWN, OutputFormat.HTML)) {
      assertThat(text(format, "A\u001bc\u0007 \u202eB"))
          .as(format.name())
          .contains("A\ufffdc\ufffd \ufffdB")
          .doesNotContain("\u001b", "\u0007", "\u202e");
    }
  }

  @Test
  void html() {
    assertThat(text(OutputFormat.HTML, "<b>A</b>"))
        .isEqualTo(
            """
            <section>
            <p>Two &amp; more.</p>
            <table>
            <caption>How do &lt;tyres&gt; compare?</caption>
            <thead><tr><th scope="col" title="The model&#39;s full name.">Model</th>\
            <th scope="col" title="The test&#39;s date, as exactly as known.">Date</th><th scope="col">Tests</th>\
            <th scope="col">Share</th><th scope="col">Step</th><th scope="col">Wet braking, m</th>\
            <th scope="col">Tied</th></tr></thead>
            <tbody>
            <tr><th scope="row">&lt;b&gt;A&lt;/b&gt;</th><td>2021-05-04</td><td>3</td><td>25 %</td>\
            <td>\u22121.2</td><td>\u2248\u00a031.2 (2)<br>\u22121.0\u00a0% [\u22122.0, 0.0]</td><td>yes</td></tr>
            <tr><th scope="row">B</th><td>2021</td><td>0</td><td>\u2013</td><td>\u2013</td>\
            <td>\u2013</td><td>no</td></tr>
            </tbody>
            </table>
            <table>
            <caption>Places: &lt;b&gt;A&lt;/b&gt;</caption>
            <thead><tr><th scope="col" title="The test&#39;s key.">Test</th><th scope="col">Place</th></tr></thead>
            <tbody>
            <tr><th scope="row">t-1</th><td>2</td></tr>
            </tbody>
            </table>
            <table>
            <caption>Places: B</caption>
            <thead><tr><th scope="col" title="The test&#39;s key.">Test</th><th scope="col">Place</th></tr></thead>
            <tbody>
            <tr><th scope="row">t-1</th><td>2</td></tr>
            </tbody>
            </table>
            <p>Left out</p>
            <ul>
            <li>4 places without values</li>
            </ul>
            <p>Read with care</p>
            <ul>
            <li>Mind the &quot;gap&quot;.</li>
            </ul>
            <p>Sources</p>
            <ol>
            <li value="7">A title, 2021-05-04, own (file.csv)</li>
            <li value="9">No day (other.csv)</li>
            </ol>
            </section>
            """);
  }

  @Test
  void csvHasAColumnForEachPartAndNoFormulas() {
    assertThat(text(OutputFormat.CSV, "=HYPERLINK(1)"))
        .isEqualTo(
            """
            model,date,count,share,step,wet-braking,wet-braking.delta,wet-braking.place,flag
            "'=HYPERLINK(1)",2021-05-04,3,0.25,-1.2,31.24,-1.0,2,true
            B,2021,0,,,,,,false
            """);
  }

  @Test
  void markdownKeepsAFigureInItsCell() {
    assertThat(text(OutputFormat.MARKDOWN, "A|B"))
        .contains("| A\\|B | 2021-05-04 | 3 | 25 % | \u22121.2 |")
        .contains("| \u2248\u00a031.2 (2); \u22121.0\u00a0% \\[\u22122.0, 0.0] | yes |");
  }

  @Test
  void aWideTableFallsIntoStripsThatRepeatTheFirstColumn() {
    String text = OutputFormat.TABLE.text(answer("Model"), new TerminalStyle(40, false));
    assertThat(text.lines().filter(line -> line.startsWith("Model")).count()).isGreaterThan(2);
    assertThat(text.lines().mapToInt(String::length)).allMatch(length -> length <= 40);
  }

  @Test
  void aWorkbookHasTypedCells() throws IOException {
    try (ReadableWorkbook book =
        new ReadableWorkbook(
            new ByteArrayInputStream(bytes(OutputFormat.XLSX, "=1+1")),
            new ReadingOptions(true, true))) {
      assertThat(book.getSheets().map(sheet -> sheet.getName()))
          .containsExactly("table", "Places", "About");
      List<Row> rows = book.getFirstSheet().read();
      assertThat(rows.get(0))
          .extracting(Cell::getRawValue)
          .containsExactly(
              "Model",
              "Date",
              "Tests",
              "Share",
              "Step",
              "Wet braking, m",
              "Wet braking: difference, %",
              "Wet braking: place",
              "Tied");
      Row first = rows.get(1);
      assertThat(first.getCell(0).getType()).isEqualTo(CellType.STRING);
      assertThat(first.getCell(0).asString()).isEqualTo("=1+1");
      assertThat(first.getCell(1).asDate())
          .isEqualTo(LocalDateTime.of(LocalDate.of(2021, 5, 4), java.time.LocalTime.MIDNIGHT));
      assertThat(first.getCell(1).getDataFormatString()).isEqualTo("yyyy-mm-dd");
      assertThat(first.getCell(2).asNumber()).isEqualByComparingTo("3");
      assertThat(first.getCell(3).asNumber()).isEqualByComparingTo(new BigDecimal("0.25"));
      assertThat(first.getCell(3).getDataFormatString()).isEqualTo("0%");
      assertThat(first.getCell(4).getDataFormatString()).isEqualTo("+0.0;-0.0;0.0");
      assertThat(first.getCell(5).asNumber()).isEqualByComparingTo(new BigDecimal("31.24"));
      assertThat(first.getCell(8).asBoolean()).isTrue();
      Row second = rows.get(2);
      assertThat(second.getCell(1).asString()).as("a year is no day").isEqualTo("2021");
      assertThat(second.getOptionalCell(3).filter(cell -> cell.getType() != CellType.EMPTY))
          .as("missing stays empty")
          .isEmpty();
      List<Row> about = book.findSheet("About").orElseThrow().read();
      assertThat(
              about.stream().flatMap(Row::stream).filter(Objects::nonNull).map(Cell::getRawValue))
          .contains("Two & more.", "places without values", "Mind the \"gap\".", "A title");
      assertThat(book.findSheet("Places").orElseThrow().read().get(1))
          .extracting(Cell::getRawValue)
          .containsExactly("=1+1", "t-1", "2");
    }
  }

  @Test
  void theSameAnswerGivesTheSameBytes() {
    for (OutputFormat format : OutputFormat.values()) {
      assertThat(bytes(format, "A")).as(format.word()).isEqualTo(bytes(format, "A"));
    }
  }

  @Test
  void aWorkbookDoesNotTellWhenItWasWritten() throws IOException {
    ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(bytes(OutputFormat.XLSX, "A")));
    int entries = 0;
    for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
      assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
      assertThat(new String(zip.readAllBytes(), StandardCharsets.UTF_8))
          .doesNotContain("dcterms:created", "dcterms:modified");
      entries++;
    }
    assertThat(entries).isGreaterThan(5);
  }
}
