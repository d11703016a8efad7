package org.griplore.ingest.grid.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.text.AlignedTable;
import org.griplore.ingest.grid.text.SplitNames;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the pages of a PDF that has text, through Apache PDFBox: its letters by their positions,
 * put together to lines and columns. Nothing in the file says which texts belong together, so that
 * what is read of it is never more than a draft. Scripts, links, attached files and forms are left
 * alone.
 */
public final class PdfReader {
  static final String DRAFT =
      "A PDF holds letters at places and no table: look whether each figure stands in its column.";

  private static final long MOST_BYTES = 64L << 20;
  private static final int MOST_PAGES = 300;

  private PdfReader() {}

  /**
   * Reads a source as a PDF; a row is a line of its page. Pages without a table are the preamble of
   * the next table.
   *
   * @throws Refusal when it has a password, is damaged, too long, or a scan without text
   */
  public static Content read(Original original) {
    String name = original.name();
    if (original.bytes() > MOST_BYTES) {
      throw refusal(name, "a PDF of more than " + (MOST_BYTES >> 20) + " MB: save the pages apart");
    }
    try (PDDocument document = Loader.loadPDF(original.readAll())) {
      if (document.getNumberOfPages() > MOST_PAGES) {
        throw refusal(name, "a PDF of more than " + MOST_PAGES + " pages: save those apart");
      }
      return content(name, document);
    } catch (InvalidPasswordException e) {
      throw refusal(name, "a PDF with a password: save it without one");
    } catch (Refusal e) {
      throw e;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw new Refusal(
          name + " is a damaged or incomplete PDF: save it anew and add it again.",
          e,
          new Problem(name, "a damaged PDF", "a whole PDF"));
    }
  }

  private static Refusal refusal(String name, String what) {
    return new Refusal(name + " is " + what + ".", new Problem(name, what, "a PDF with text"));
  }

  private static Content content(String name, PDDocument document) throws IOException {
    CellCount count = new CellCount(name);
    List<Grid> grids = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<GridCell> preamble = new ArrayList<>();
    List<Content.Line> all = new ArrayList<>();
    int pages = document.getNumberOfPages();
    for (int page = 1; page <= pages; page++) {
      List<AlignedTable.Line> lines = PageLetters.lines(document, page, count);
      String where = "page " + page;
      lines.forEach(line -> all.add(new Content.Line(all.size() + 1, text(line))));
      Optional<List<List<GridCell>>> rows = AlignedTable.rows(lines);
      if (rows.isPresent()) {
        List<List<GridCell>> joined = SplitNames.joined(rows.get(), findings);
        grids.add(
            new Grid(pages == 1 ? "" : where, preamble, joined, List.of(), false)
                .from(where)
                .asDraft(DRAFT));
        preamble = new ArrayList<>();
      } else {
        for (AlignedTable.Line line : lines) {
          preamble.add(GridCell.of(line.number(), 1, text(line)));
        }
      }
    }
    if (all.isEmpty()) {
      throw refusal(
          name,
          "a scan: its pages are pictures without text; have the text recognised and save it as"
              + " PDF or a workbook, or type its table into a CSV file");
    }
    if (grids.isEmpty()) {
      return new Content.Prose(all, findings);
    }
    if (!preamble.isEmpty()) {
      grids.add(new Grid("after the tables", preamble, List.of(), List.of(), false).asDraft(DRAFT));
    }
    return new Content.Tables("PDF", grids, findings);
  }

  private static String text(AlignedTable.Line line) {
    StringBuilder text = new StringBuilder();
    for (AlignedTable.Piece piece : line.pieces()) {
      text.append(text.isEmpty() ? "" : "  ").append(piece.cell().text());
    }
    return text.toString();
  }
}
