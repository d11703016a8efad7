package org.griplore.ingest.grid.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.griplore.ingest.grid.CellCount;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.grid.VisibleText;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads the sheets of an XLSX workbook, hidden ones too; formulas give their stored values, and
 * themselves ({@code =A1/B1}) where the workbook stores none. A sheet has no name when it is the
 * only one.
 */
public final class XlsxReader {
  private final CellCount count;

  private XlsxReader(String name) {
    this.count = new CellCount(name);
  }

  public static boolean isZip(Original original) throws IOException {
    try (InputStream in = original.content().open()) {
      byte[] head = in.readNBytes(4);
      return head.length == 4 && head[0] == 'P' && head[1] == 'K' && head[2] < 9 && head[3] < 9;
    }
  }

  public static List<Grid> read(Original original) {
    byte[] bytes = original.readAll();
    Map<String, List<Grid.Merge>> merges = WorkbookParts.mergesBySheet(original.name(), bytes);
    XlsxReader reader = new XlsxReader(original.name());
    List<Grid> grids = new ArrayList<>();
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, false))) {
      List<Sheet> sheets = workbook.getSheets().toList();
      for (Sheet sheet : sheets) {
        List<Grid.Merge> merged = merges.getOrDefault(sheet.getName(), List.of());
        grids.add(reader.grid(sheet, sheets.size() == 1, workbook.isDate1904(), merged));
      }
    } catch (Refusal e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw damaged(original.name(), e);
    }
    return grids;
  }

  public static Refusal damaged(String name, Exception cause) {
    return new Refusal(
        name + " is a damaged or incomplete workbook: save it anew and add it again.",
        cause,
        new Problem(name, "a damaged workbook", "a whole XLSX file"));
  }

  private Grid grid(Sheet sheet, boolean only, boolean from1904, List<Grid.Merge> merges)
      throws IOException {
    List<List<GridCell>> rows = new ArrayList<>();
    Set<Integer> hidden = new HashSet<>();
    try (Stream<Row> stream = sheet.openStream()) {
      stream.forEach(
          row -> {
            List<GridCell> line = cells(row, from1904);
            if (!line.isEmpty()) {
              rows.add(line);
              if (row.isHidden()) {
                hidden.add(line.get(0).row());
              }
            }
          });
    }
    boolean whole = sheet.getVisibility() != SheetVisibility.VISIBLE;
    return new Grid(only ? "" : sheet.getName(), List.of(), rows, merges, false)
        .hiding(new Grid.Hidden(whole, hidden, Set.of()));
  }

  private List<GridCell> cells(Row row, boolean from1904) {
    List<GridCell> line = new ArrayList<>();
    for (Cell cell : row) {
      if (cell != null) {
        cell(cell, from1904).ifPresent(line::add);
      }
    }
    count.add(line.size());
    line.sort(Comparator.comparingInt(GridCell::column));
    return line;
  }

  private static Optional<GridCell> cell(Cell cell, boolean from1904) {
    int row = cell.getAddress().getRow() + 1;
    int column = cell.getAddress().getColumn() + 1;
    if (cell.getValue() instanceof BigDecimal number && CellFormat.isMeasurable(number)) {
      return Optional.of(
          CellFormat.cell(row, column, number, cell.getDataFormatString(), from1904));
    }
    if (cell.getType() == CellType.STRING && cell.getValue() == null) {
      throw new IllegalStateException("the shared text of " + cell.getAddress() + " is missing");
    }
    String text = VisibleText.of(cell.getText());
    if (text.isEmpty() && cell.getValue() == null && cell.getFormula() != null) {
      text = "=" + cell.getFormula();
    }
    return text.isEmpty() ? Optional.empty() : Optional.of(GridCell.of(row, column, text));
  }
}
