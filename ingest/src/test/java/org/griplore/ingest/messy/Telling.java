package org.griplore.ingest.messy;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Refusal;

/** Whether a reading tells the tester of what it did not take. */
final class Telling {
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");

  private Telling() {}

  /** Whether some finding quotes a text. */
  static boolean tells(ReadBack read, String text) {
    String wanted = plain(text);
    return read.findings().stream()
        .anyMatch(
            finding ->
                plain(finding.found()).contains(wanted)
                    || plain(finding.expected()).contains(wanted)
                    || finding.cell() != null && plain(finding.cell().found()).contains(wanted));
  }

  /**
   * Whether a finding of something not taken tells of a figure: it quotes the figure or the tyre,
   * stands in its row or column of the file, or is about the file as a whole. A file that was
   * refused or waits to be decided tells of all it holds.
   *
   * @param cells the cells of the file
   */
  static boolean tells(ReadBack read, List<Cell> cells, Truth.Stated stated) {
    if (read.refusal() != null || read.draft()) {
      return true;
    }
    List<Finding> notTaken =
        read.findings().stream()
            .filter(
                finding ->
                    finding.kind() == Finding.Kind.NOT_READ
                        || finding.kind() == Finding.Kind.CONFLICT)
            .toList();
    return notTaken.stream().anyMatch(finding -> tells(finding, cells, stated));
  }

  private static boolean tells(Finding finding, List<Cell> cells, Truth.Stated stated) {
    Cell cell = finding.cell();
    if (cell == null) {
      return finding.kind() == Finding.Kind.NOT_READ;
    }
    String text = finding.found() + " " + cell.found();
    String key = NameKey.of(text);
    if (stated.tyre().stream().anyMatch(name -> key.contains(NameKey.of(name)))) {
      return true;
    }
    return holds(text, stated)
        || cells.stream()
            .filter(own -> own.row() == cell.row() || own.column() == cell.column())
            .filter(own -> cell.sheet().isEmpty() || own.sheet().equals(cell.sheet()))
            .anyMatch(own -> holds(own.found(), stated));
  }

  private static boolean holds(String text, Truth.Stated stated) {
    Matcher numbers = NUMBER.matcher(text);
    while (numbers.find()) {
      double number = Double.parseDouble(numbers.group().replace(',', '.'));
      if (stated.figures().stream().anyMatch(figure -> figure.value() == number)) {
        return true;
      }
    }
    return false;
  }

  /** The cells of a file that can be cut into cells; none of others. */
  static List<Cell> cells(MessyFile file) {
    try {
      return DocumentReader.read(file.name(), file.content()) instanceof Content.Tables tables
          ? tables.grids().stream()
              .flatMap(
                  grid ->
                      grid.rows().stream()
                          .flatMap(List::stream)
                          .map(c -> new Cell(grid.name(), c.row(), c.column(), c.text())))
              .toList()
          : List.of();
    } catch (Refusal refused) {
      return List.of();
    }
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
