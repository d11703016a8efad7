package org.griplore.ingest.grid.print;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.MarkedText;
import org.griplore.ingest.grid.text.AlignedTable;

/**
 * The letters of a page, put together to lines and, where wide gaps part them, to pieces. A small
 * letter that stands above the foot of its line is a raised mark.
 */
final class PageLetters extends PDFTextStripper {
  /** Letters whose feet are so near, in heights of a letter, stand in one line. */
  private static final double SAME_LINE = 0.5;

  /** A gap of so many widths of a blank parts two pieces; a smaller one is a blank. */
  private static final double PARTING_GAP = 2.0;

  private static final double BLANK_GAP = 0.35;
  private static final double SMALL = 0.8;
  private static final double ABOVE = 0.15;

  private final CellCount count;
  private final List<TextPosition> letters = new ArrayList<>();

  private PageLetters(CellCount count) {
    this.count = count;
  }

  /** The lines of a page, from top to bottom; none where it holds no text. */
  static List<AlignedTable.Line> lines(PDDocument document, int page, CellCount count)
      throws IOException {
    PageLetters reader = new PageLetters(count);
    reader.setStartPage(page);
    reader.setEndPage(page);
    try (Writer nowhere =
        new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8)) {
      reader.writeText(document, nowhere);
    }
    List<AlignedTable.Line> lines = new ArrayList<>();
    for (List<TextPosition> line : reader.inLines()) {
      List<AlignedTable.Piece> pieces = pieces(line);
      if (!pieces.isEmpty()) {
        lines.add(new AlignedTable.Line(lines.size() + 1, pieces));
      }
    }
    return lines;
  }

  @Override
  protected void processTextPosition(TextPosition letter) {
    String text = letter.getUnicode();
    boolean placed =
        Float.isFinite(letter.getXDirAdj())
            && Float.isFinite(letter.getYDirAdj())
            && Float.isFinite(letter.getWidthDirAdj());
    if (text != null && !text.isBlank() && placed) {
      count.add(1);
      letters.add(letter);
    }
  }

  private List<List<TextPosition>> inLines() {
    letters.sort(Comparator.comparingDouble(TextPosition::getYDirAdj));
    List<List<TextPosition>> lines = new ArrayList<>();
    double foot = Double.NEGATIVE_INFINITY;
    for (TextPosition letter : letters) {
      double height = Math.max(1, letter.getFontSizeInPt());
      if (lines.isEmpty() || letter.getYDirAdj() - foot > SAME_LINE * height) {
        lines.add(new ArrayList<>());
      }
      lines.get(lines.size() - 1).add(letter);
      foot = letter.getYDirAdj();
    }
    lines.forEach(line -> line.sort(Comparator.comparingDouble(TextPosition::getXDirAdj)));
    return lines;
  }

  private static List<AlignedTable.Piece> pieces(List<TextPosition> line) {
    double size = line.stream().mapToDouble(TextPosition::getFontSizeInPt).max().orElse(1);
    double foot =
        line.stream()
            .filter(letter -> letter.getFontSizeInPt() >= SMALL * size)
            .mapToDouble(TextPosition::getYDirAdj)
            .max()
            .orElse(0);
    List<AlignedTable.Piece> pieces = new ArrayList<>();
    MarkedText text = new MarkedText();
    double start = line.get(0).getXDirAdj();
    double end = start;
    for (TextPosition letter : line) {
      double blank = blank(letter, size);
      double gap = letter.getXDirAdj() - end;
      if (gap > PARTING_GAP * blank) {
        add(pieces, text, start, end);
        text = new MarkedText();
        start = letter.getXDirAdj();
      } else if (gap > BLANK_GAP * blank) {
        text.add(" ", false, false);
      }
      boolean raised =
          letter.getFontSizeInPt() < SMALL * size && foot - letter.getYDirAdj() > ABOVE * size;
      text.add(letter.getUnicode(), raised, false);
      end = Math.max(end, letter.getXDirAdj() + letter.getWidthDirAdj());
    }
    add(pieces, text, start, end);
    return pieces;
  }

  private static double blank(TextPosition letter, double size) {
    double told = letter.getWidthOfSpace();
    return told > 0.1 * size && told < size ? told : 0.28 * size;
  }

  private static void add(
      List<AlignedTable.Piece> pieces, MarkedText text, double start, double end) {
    GridCell cell = text.cell(1, 1);
    if (cell != null) {
      int from = (int) Math.max(0, Math.floor(start));
      pieces.add(new AlignedTable.Piece(from, (int) Math.max(from + 1, Math.ceil(end)), cell));
    }
  }
}
