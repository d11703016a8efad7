package org.griplore.ingest.grid.source;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.griplore.ingest.grid.workbook.WorkbookBytes;

/** A small whole source of each kind, to be damaged. */
enum SourceSamples {
  XLSX {
    @Override
    byte[] bytes() {
      String rows =
          "<row r=\"1\"><c r=\"A1\" s=\"1\"><v>44361</v></c><c r=\"B1\" t=\"s\"><v>0</v></c></row>";
      return WorkbookBytes.of(rows, "<mergeCells><mergeCell ref=\"A1:B1\"/></mergeCells>", "14")
          .with("xl/sharedStrings.xml", "<sst><si><t>Kelt</t></si></sst>")
          .zipped();
    }
  },
  XLS {
    @Override
    byte[] bytes() throws IOException {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (HSSFWorkbook book = new HSSFWorkbook()) {
        var sheet = book.createSheet("Wet");
        for (int row = 0; row < 5; row++) {
          sheet.createRow(row).createCell(0).setCellValue("Kelt " + row);
          sheet.getRow(row).createCell(1).setCellValue(30.5 + row);
        }
        book.write(out);
      }
      return out.toByteArray();
    }
  },
  FLAT_OPEN_DOCUMENT {
    @Override
    byte[] bytes() {
      return text(
          "<?xml version=\"1.0\"?><o:document xmlns:o=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" xmlns:t=\"t\" xmlns:x=\"x\"><o:body><o:spreadsheet><t:table t:name=\"W\"><t:table-column t:number-columns-repeated=\"2\" t:visibility=\"collapse\"/><t:table-row t:number-rows-repeated=\"3\"><t:table-cell o:value-type=\"float\" o:value=\"31.25\" t:number-columns-repeated=\"2\"><x:p>31.25</x:p></t:table-cell><t:table-cell t:number-columns-spanned=\"2\"><x:p>Kelt<x:s x:c=\"3\"/>2</x:p></t:table-cell></t:table-row></t:table></o:spreadsheet></o:body></o:document>");
    }
  },
  SPREADSHEET_XML {
    @Override
    byte[] bytes() {
      return text(
          "<?xml version=\"1.0\"?><Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\" xmlns:ss=\"urn:schemas-microsoft-com:office:spreadsheet\"><Worksheet ss:Name=\"W\"><Table><Column ss:Index=\"3\" ss:Hidden=\"1\" ss:Span=\"4\"/><Row ss:Index=\"2\"><Cell ss:MergeAcross=\"1\" ss:Index=\"4\"><Data ss:Type=\"Number\">31.2</Data></Cell></Row></Table></Worksheet></Workbook>");
    }
  },
  DOCX {
    @Override
    byte[] bytes() {
      return WorkbookBytes.empty()
          .with(
              "word/document.xml",
              "<w:document xmlns:w=\"w\"><w:body><w:tbl><w:tr><w:tc><w:tcPr><w:gridSpan w:val=\"2\"/></w:tcPr><w:p><w:r><w:t>Kelt</w:t></w:r></w:p></w:tc><w:tc><w:p><w:r><w:t>31</w:t></w:r></w:p></w:tc></w:tr></w:tbl></w:body></w:document>")
          .zipped();
    }
  },
  RICH_TEXT {
    @Override
    byte[] bytes() {
      return text(
          "{\\rtf1\\ansi\\ansicpg1250{\\fonttbl{\\f0\\fcharset238 A;}}\\trowd\\clmgf\\cellx1\\clmrg\\cellx2\\intbl \\f0 K\\'e4\\cell \\u229?x\\cell\\row\\pard{\\super 1}{\\*\\x y}a\\par}");
    }
  },
  LETTER {
    @Override
    byte[] bytes() {
      return text(
          "From: a\nMIME-Version: 1.0\nContent-Type: multipart/mixed; boundary=\"b\"\n\n--b\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: quoted-printable\n\nModel;Wet;Dry\nKelt=20;1;2\nKelt 3;2;3\n--b\nContent-Disposition: attachment; filename=\"a.csv\"\nContent-Transfer-Encoding: base64\n\nTW9kZWw7RHJ5Cg==\n--b--\n");
    }
  },
  PACKED {
    @Override
    byte[] bytes() {
      return WorkbookBytes.empty()
          .with("a/wet.csv", "Model;Wet;Dry\nKelt 2;31.2;38.4\nKelt 3;30.1;37.2\n")
          .with("b.json", "[{\"Model\":\"Kelt\",\"Wet\":{\"value\":1,\"unit\":\"m\"}}]")
          .zipped();
    }
  },
  PDF {
    @Override
    byte[] bytes() throws IOException {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (PDDocument document = new PDDocument()) {
        PDPage page = new PDPage();
        document.addPage(page);
        try (PDPageContentStream on =
            new PDPageContentStream(
                document, page, PDPageContentStream.AppendMode.OVERWRITE, false)) {
          for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 2; column++) {
              on.beginText();
              on.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 10);
              on.newLineAtOffset(60 + 150 * column, 700 - 15 * row);
              on.showText(column == 0 ? "Kelt " + row : "3" + row + ".5");
              on.endText();
            }
          }
        }
        document.save(out);
      }
      return out.toByteArray();
    }
  },
  JSON {
    @Override
    byte[] bytes() {
      return text(
          "{\"test\":\"x\",\"results\":[{\"maker\":\"Kelt\",\"wet\":{\"value\":1.5,\"unit\":\"m\"},\"l\":[1,2]},\n{\"maker\":\"Hjort\",\"wet\":{\"value\":2}}]}");
    }
  },
  PAGE {
    @Override
    byte[] bytes() throws IOException {
      return Files.readAllBytes(
          Path.of("src/test/resources/grid-cases/page-spans-and-marks/input.html"));
    }
  },
  TRACE {
    @Override
    byte[] bytes() {
      return text(
          "t (s),v (km/h),s (m)\n0,100,0\n0.5,80,14.0\n1,70,22\n1.5,60,29\n2,50,35\n2.5,40,39.5\n3,30,43\n3.5,20,45.5\n4,10,47.0\n4.4,0,47.6\n");
    }
  };

  abstract byte[] bytes() throws IOException;

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
