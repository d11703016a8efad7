package org.griplore.ingest.grid.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/**
 * A table typed or printed in letters of one width, its columns parted by two blanks or more. A
 * name that goes on in an indented line below, or begins in the line above its figures, is put
 * together, with a finding.
 */
public final class FixedWidthText {
  private static final Pattern PIECE = Pattern.compile("\\S+(?: \\S+)*");
  private static final Pattern FIGURES =
      Pattern.compile("[-+\u2212]?\\d+[.,]\\d+(?: [-+\u2212]?\\d+[.,]\\d+)+");
  private static final Pattern RULE = Pattern.compile("[-=_+|\\s*.\u2500-\u257f]+");
  private static final int MOST_LINES = 100_000;
  private static final int LONGEST_LINE = 2000;

  private FixedWidthText() {}

  /** The table; empty when the lines are none. */
  public static Optional<Content> read(List<Content.Line> lines) {
    boolean tooLong = lines.stream().anyMatch(line -> line.text().length() > LONGEST_LINE);
    if (lines.size() > MOST_LINES || tooLong) {
      return Optional.empty();
    }
    List<AlignedTable.Line> aligned = new ArrayList<>();
    for (Content.Line line : lines) {
      if (!line.text().isBlank() && !RULE.matcher(line.text()).matches()) {
        aligned.add(new AlignedTable.Line(line.number(), pieces(expanded(line.text()))));
      }
    }
    return AlignedTable.rows(aligned).map(FixedWidthText::tables);
  }

  private static String expanded(String text) {
    return text.replace('\u00a0', ' ').replace('\u2502', ' ').replace("\t", "    ");
  }

  private static List<AlignedTable.Piece> pieces(String line) {
    List<AlignedTable.Piece> pieces = new ArrayList<>();
    Matcher piece = PIECE.matcher(line);
    while (piece.find()) {
      if (FIGURES.matcher(piece.group()).matches()) {
        int at = piece.start();
        for (String figure : piece.group().split(" ")) {
          pieces.add(piece(at, figure));
          at += figure.length() + 1;
        }
      } else {
        pieces.add(piece(piece.start(), piece.group()));
      }
    }
    return pieces;
  }

  private static AlignedTable.Piece piece(int start, String text) {
    return new AlignedTable.Piece(start, start + text.length(), GridCell.of(1, 1, text));
  }

  private static Content tables(List<List<GridCell>> rows) {
    List<Finding> findings = new ArrayList<>();
    List<List<GridCell>> joined = SplitNames.joined(rows, findings);
    return new Content.Tables("aligned text", List.of(Grid.of("", joined)), findings);
  }

  /** The finding that two lines were taken for one name. */
  static Finding joined(GridCell name) {
    return new Finding(
        Finding.Kind.ASSUMED,
        new Cell("", name.row(), name.column(), name.text()),
        name.text(),
        "a name in one line; two were taken for one",
        "write it in one line where that is wrong");
  }
}
