package org.griplore.ingest.grid.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.workbook.WorkbookBytes;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Documents, letters, packed folders, printed pages and pasted texts as grids. */
class DocumentsTest {
  private static Content read(byte[] bytes) {
    return DocumentReader.read("in", bytes);
  }

  private static Content read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<Grid> grids(Content content) {
    return ((Content.Tables) content).grids();
  }

  private static List<String> rows(Content content) {
    return grids(content).get(0).rows().stream().map(GridView::row).toList();
  }

  private static String p(String runs) {
    return "<w:p>" + runs + "</w:p>";
  }

  private static String r(String text, String look) {
    return "<w:r><w:rPr>" + look + "</w:rPr><w:t>" + text + "</w:t></w:r>";
  }

  private static String tc(String inside) {
    return "<w:tc>" + inside + "</w:tc>";
  }

  private static byte[] docx(String body) {
    return WorkbookBytes.empty()
        .with(
            "word/document.xml",
            "<w:document xmlns:w=\"w\"><w:body>" + body + "</w:body></w:document>")
        .with(
            "word/comments.xml",
            "<w:comments xmlns:w=\"w\"><w:comment w:id=\"0\">"
                + p(r("invalid", ""))
                + "</w:comment></w:comments>")
        .zipped();
  }

  @Test
  void tablesOfATextDocumentAreReadWithWhatStandsAbove() {
    String table =
        "<w:tbl><w:tr>"
            + tc("<w:tcPr><w:gridSpan w:val=\"2\"/></w:tcPr>" + p(r("Kelt", "")))
            + tc(p(r("Dry", "")))
            + "</w:tr>"
            + "<w:tr>"
            + tc(
                "<w:tcPr><w:vMerge w:val=\"restart\"/></w:tcPr>"
                    + p(r("Kelt 2", "") + r("1", "<w:vertAlign w:val=\"superscript\"/>")))
            + tc(
                p(
                    r("31.2", "<w:strike/>")
                        + r("30.1", "")
                        + "<w:del>"
                        + r("99", "")
                        + "</w:del><w:r><w:commentReference w:id=\"0\"/></w:r>"))
            + tc(p(r("7", "<w:vanish/>") + r("38.4", "")))
            + "</w:tr>"
            + "<w:tr>"
            + tc("<w:tcPr><w:vMerge/></w:tcPr>" + p(""))
            + tc(p(r("30.9", "")))
            + tc(p(""))
            + "</w:tr></w:tbl>";
    Content content = read(docx(p(r("Size: 205/55 R16", "")) + table + p(r("Dry day", ""))));

    assertThat(rows(content))
        .containsExactly(
            "1|1:Kelt|3:Dry",
            "2|1:Kelt 2 ^1|2:30.1 (struck out: 31.2; invalid)|3:38.4",
            "3|2:30.9");
    assertThat(grids(content).get(0).merges())
        .contains(new Grid.Merge(1, 1, 1, 2), new Grid.Merge(2, 1, 3, 1));
    assertThat(grids(content).get(0).preamble())
        .extracting(c -> c.text())
        .containsExactly("Size: 205/55 R16");
    assertThat(grids(content).get(1).preamble())
        .extracting(c -> c.text())
        .containsExactly("Dry day");
  }

  @Test
  void aTextDocumentWithoutTablesIsNotesAndDamageIsOneSentence() {
    assertThat(read(docx(p(r("It felt vague.", ""))))).isInstanceOf(Content.Prose.class);
    assertThatThrownBy(() -> read(docx("<w:tbl><w:tr><w:tc>".repeat(3))))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("damaged or incomplete text document");
    String deep = "<w:tbl><w:tr><w:tc>".repeat(2000) + "</w:tc></w:tr></w:tbl>".repeat(2000);
    assertThatThrownBy(() -> read(docx(deep)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("nests tables deeper than 20");
  }

  @Test
  void tablesOfRichTextAreReadWithTheirLetters() {
    String rtf =
        "{\\rtf1\\ansi\\ansicpg1252\\deff0{\\fonttbl{\\f0\\fcharset0 Arial;}{\\f1\\fcharset204 Cyr;}}{\\*\\generator x;}{\\info{\\author n}}\n"
            + "\\pard Summer test\\par\n"
            + "\\trowd\\cellx1000\\cellx2000\\pard\\intbl Kelt\\cell Br\\'e4msen\\cell\\row\n"
            + "\\trowd\\cellx1000\\cellx2000\\pard\\intbl Hjortm\\u229?ne{\\super 1}\\cell {\\strike 31,2} 30,1\\cell\\row\n"
            + "\\pard {\\f1 \\'cb}\\par}";
    Content content = read(rtf);

    assertThat(rows(content))
        .containsExactly(
            "1|1:Kelt|2:Bremsen".replace("Bremsen", "Br\u00e4msen"),
            "2|1:Hjortm\u00e5ne ^1|2:30,1 (struck out: 31,2)");
    assertThat(grids(content).get(0).preamble())
        .extracting(c -> c.text())
        .containsExactly("Summer test");
    assertThat(grids(content).get(1).preamble())
        .extracting(c -> c.text())
        .containsExactly("\u041b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"{\\rtf1 abc", "{\\rtf1 \\", "{\\rtf1 \\bin99999999 x", "{\\rtf1}}"})
  void richTextThatBreaksOffIsOneSentence(String rtf) {
    if (!rtf.endsWith("}}")) {
      assertThatThrownBy(() -> read(rtf))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("damaged or incomplete rich-text document");
    }
    assertThatThrownBy(() -> read("{\\rtf1" + "{".repeat(100_000)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("nested deeper");
  }

  private static final String LETTER =
      """
      From: a@example.org
      Subject: =?utf-8?q?Br=C3=A4ms?=
      MIME-Version: 1.0
      Message-ID: <1@example.org>
      Content-Type: multipart/mixed; boundary="b"

      --b
      Content-Type: multipart/alternative; boundary="c"

      --c
      Content-Type: text/plain; charset=utf-8

      See the table.
      --c
      Content-Type: text/html; charset=iso-8859-1
      Content-Transfer-Encoding: quoted-printable

      <html><table><tr><td>Model</td><td>Br=E4ms</td></tr><tr><td>Kelt 2</td><td>31.2</td></tr></table></html>
      --c--
      --b
      Content-Type: text/csv; name="dry.csv"
      Content-Disposition: attachment; filename*=utf-8''..%2Fdr%C3%BD.csv
      Content-Transfer-Encoding: base64

      TW9kZWw7RHJ5O1dldApLZWx0IDI7MzguNDszMQpLZWx0IDM7MzcuNDszMgo=
      --b
      Content-Type: image/png; name="logo.png"
      Content-Transfer-Encoding: base64

      iVBORw0KGgo=
      --b--
      """;

  @Test
  void aLetterIsItsBodyAndItsAttachments() {
    Content.Members letter = (Content.Members) read(LETTER);

    assertThat(letter.members()).extracting(Original::name).containsExactly("in", "dr\u00fd.csv");
    assertThat(letter.passedOver()).containsExactly("logo.png");
    assertThat(rows(DocumentReader.read(letter.members().get(0))))
        .containsExactly("1|1:Model|2:Br\u00e4ms", "2|1:Kelt 2|2:31.2");
    assertThat(rows(DocumentReader.read(letter.members().get(1))))
        .contains("2|1:Kelt 2|2:38.4|3:31");
  }

  @Test
  void aSavedPageIsReadAsThePage() {
    String page = LETTER.substring(0, LETTER.indexOf("--b\nContent-Type: text/csv")) + "--b--\n";

    assertThat(rows(read(page))).containsExactly("1|1:Model|2:Br\u00e4ms", "2|1:Kelt 2|2:31.2");
  }

  @Test
  void lettersInLettersWithoutEndAreRefused() {
    StringBuilder deep = new StringBuilder("MIME-Version: 1.0\nFrom: a\nSubject: b\n");
    for (int i = 0; i < 5000; i++) {
      deep.append("Content-Type: multipart/mixed; boundary=b%d\n\n--b%d\n".formatted(i, i));
    }

    assertThatThrownBy(() -> read(deep.toString())).isInstanceOf(Refusal.class);
  }

  @Test
  void eachFileOfAPackedFolderIsASourceOfItsOwn() {
    byte[] zip =
        WorkbookBytes.empty()
            .with("a/wet.csv", "Model;Wet;Dry\nKelt 2;31.2;38.4\nKelt 3;30.1;37.2\n")
            .with("../../etc/b.txt", "It felt vague.")
            .with("~$wet.xlsx", "x")
            .with("__MACOSX/._wet.csv", "x")
            .zipped();
    Content.Members folder = (Content.Members) read(zip);

    assertThat(folder.members()).extracting(Original::name).containsExactly("wet.csv", "b.txt");
    assertThat(folder.members()).extracting(Original::origin).contains("in!a/wet.csv");
    assertThat(folder.passedOver()).hasSize(2);
    assertThat(rows(DocumentReader.read(folder.members().get(0)))).hasSize(3);
  }

  @Test
  void aPackedFolderThatUnpacksToTooMuchIsRefused() {
    byte[] bomb = WorkbookBytes.empty().with("a.csv", "0".repeat(64 << 20)).zipped();

    assertThatThrownBy(() -> read(bomb))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("more than 200 times its size");
  }

  private static byte[] pdf(boolean text, String password) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      if (text) {
        try (PDPageContentStream on = new PDPageContentStream(document, page)) {
          String[][] cells = {
            {"Summer test 2021 of the club"},
            {"Model", "Wet braking (m)", "Dry braking (m)"},
            {"Kelt Aurelis 5", "31.2", "38.4"},
            {"Kelt Corvant", "30.1", "37.2"},
            {"Ostran Sport"},
            {null, "33.9", "39.0"}
          };
          for (int row = 0; row < cells.length; row++) {
            for (int column = 0; column < cells[row].length; column++) {
              if (cells[row][column] != null) {
                at(on, 60 + 160 * column, 700 - 15 * row, 10, cells[row][column]);
              }
            }
          }
          at(on, 60 + 160 + 20, 700 - 15 * 2 + 4, 6, "1");
        }
      }
      if (password != null) {
        document.protect(new StandardProtectionPolicy(password, password, new AccessPermission()));
      }
      document.save(out);
    }
    return out.toByteArray();
  }

  private static void at(PDPageContentStream on, int x, int y, int size, String text)
      throws IOException {
    on.beginText();
    on.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), size);
    on.newLineAtOffset(x, y);
    on.showText(text);
    on.endText();
  }

  @Test
  void aPdfWithTextIsADraftOfItsTable() throws IOException {
    Content content = read(pdf(true, null));

    assertThat(rows(content))
        .containsExactly(
            "1|1:Summer test 2021 of the club",
            "2|1:Model|2:Wet braking (m)|3:Dry braking (m)",
            "3|1:Kelt Aurelis 5|2:31.2 ^1|3:38.4",
            "4|1:Kelt Corvant|2:30.1|3:37.2",
            "5|1:Ostran Sport|2:33.9|3:39.0");
    assertThat(grids(content).get(0).draft()).isNotNull();
    assertThat(grids(content).get(0).from()).isEqualTo("page 1");
    assertThat(content.findings()).extracting(Finding::found).containsExactly("Ostran Sport");
  }

  @Test
  void aScanALockedAndACutPdfAreRefusedWithTheWayOut() throws IOException {
    assertThatThrownBy(() -> read(pdf(false, null)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("a scan")
        .hasMessageContaining("have the text recognised");
    assertThatThrownBy(() -> read(pdf(true, "secret")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("a PDF with a password");
    assertThatThrownBy(() -> read("%PDF-1.7\n1 0 obj"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("damaged or incomplete PDF");
  }

  @Test
  void columnsThatBlanksPartAreATable() {
    Content content =
        read(
            """
            Summer test 2021, wet and dry

            Tyre                 Wet (m)   Dry (m)
            ------------------------------------------
            Velmora Aurelis 5       31,2      38,4
            Ostran Corvant          30,1      37,2
            Hjort Snow
              Grip 9                33,9      39,0
            Kelt 2                  34,9      39,5
            """);

    assertThat(rows(content))
        .contains(
            "3|1:Tyre|2:Wet (m)|3:Dry (m)",
            "5|1:Velmora Aurelis 5|2:31,2|3:38,4",
            "9|1:Kelt 2|2:34,9|3:39,5");
  }

  @Test
  void aNameAboveItsFiguresIsPutTogetherWithAFinding() {
    Content content =
        read(
            """
            Tyre                 Wet (m)   Dry (m)
            Velmora Aurelis 5       31,2      38,4
            Hjort Snow Grip
                                    33,9      39,0
            Kelt 2                  34,9      39,5
            """);

    assertThat(rows(content)).contains("3|1:Hjort Snow Grip|2:33,9|3:39,0");
    assertThat(content.findings()).hasSize(1);
  }

  @Test
  void aTablePastedWithOneCellALineIsATable() {
    Content content =
        read("Tyre\nWet (m)\nDry (m)\nKelt 2\n31.2\n38.4\nKelt 3\n30.1\n-\nKelt 4\n33.0\n39.1\n");

    assertThat(rows(content))
        .containsExactly(
            "1|1:Tyre|2:Wet (m)|3:Dry (m)",
            "4|1:Kelt 2|2:31.2|3:38.4",
            "7|1:Kelt 3|2:30.1|3:-",
            "10|1:Kelt 4|2:33.0|3:39.1");
  }

  @Test
  void aLineThatCorrectsAFigureIsAFinding() {
    Content content =
        read(
            """
            [14.06.21, 09:12] Ann: Kelt 2 wet braking 31,2 m
            [14.06.21, 09:13] Bo: and Kelt 3?
            [14.06.21, 09:14] Ann: 30,1 m
            [14.06.21, 09:20] Ann: sorry, Kelt 2 should be 32,1
            """);

    assertThat(content).isInstanceOf(Content.Prose.class);
    assertThat(content.findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.cell().row()).isEqualTo(4));
  }

  @Test
  void proseIsNoTable() {
    assertThat(
            read(
                "It was late.  We stopped.\nIt felt vague.  Slow.\nWe drove 5 laps.  Then home.\n"))
        .isInstanceOf(Content.Prose.class);
  }
}
