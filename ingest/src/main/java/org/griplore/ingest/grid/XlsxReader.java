package org.griplore.ingest.grid;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Reads the sheets of an XLSX workbook, hidden ones too; formulas give their stored values. */
final class XlsxReader {
  private XlsxReader() {}

  static boolean isZip(Original original) throws IOException {
    try (InputStream in = original.content().open()) {
      byte[] head = in.readNBytes(4);
      return head.length == 4 && head[0] == 'P' && head[1] == 'K' && head[2] < 9 && head[3] < 9;
    }
  }

  static List<Grid> read(Original original) {
    byte[] bytes = original.readAll();
    Map<String, List<Grid.Merge>> merges = WorkbookParts.mergesBySheet(original.name(), bytes);
    List<Grid> grids = new ArrayList<>();
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, false))) {
      List<Sheet> sheets = workbook.getSheets().toList();
      for (Sheet sheet : sheets) {
        String name = sheets.size() == 1 ? "" : sheet.getName();
        grids.add(
            new Grid(
                name,
                List.of(),
                rows(sheet, workbook.isDate1904()),
                merges.getOrDefault(sheet.getName(), List.of()),
                false));
      }
    } catch (IOException | RuntimeException e) {
      throw damaged(original.name(), e);
    }
    return grids;
  }

  static Refusal damaged(String name, Exception cause) {
    return new Refusal(
        name + " is a damaged or incomplete workbook: save it anew and add it again.",
        cause,
        new Problem(name, "a damaged workbook", "a whole XLSX file"));
  }

  private static List<List<GridCell>> rows(Sheet sheet, boolean from1904) throws IOException {
    List<List<GridCell>> rows = new ArrayList<>();
    try (Stream<Row> stream = sheet.openStream()) {
      stream.forEach(
          row -> {
            List<GridCell> cells = new ArrayList<>();
            for (Cell cell : row) {
              if (cell != null) {
                cell(cell, from1904).ifPresent(cells::add);
              }
            }
            cells.sort(Comparator.comparingInt(GridCell::column));
            if (!cells.isEmpty()) {
              rows.add(cells);
            }
          });
    }
    return rows;
  }

  private static Optional<GridCell> cell(Cell cell, boolean from1904) {
    int row = cell.getAddress().getRow() + 1;
    int column = cell.getAddress().getColumn() + 1;
    String text = cell.getText() == null ? "" : cell.getText().strip();
    boolean numeric =
        cell.getType() == CellType.NUMBER
            || cell.getType() == CellType.FORMULA && isNumber(cell.getRawValue());
    if (!numeric) {
      String shown =
          text.isEmpty() && cell.getRawValue() != null ? cell.getRawValue().strip() : text;
      return shown.isEmpty() ? Optional.empty() : Optional.of(GridCell.of(row, column, shown));
    }
    BigDecimal number = new BigDecimal(cell.getRawValue());
    String format = cell.getDataFormatString();
    if (format != null && isDate(format)) {
      LocalDate date = date(number, from1904);
      return Optional.of(new GridCell(row, column, date.toString(), null, date));
    }
    String shown =
        format != null && format.contains("%")
            ? plain(number.movePointRight(2)) + "%"
            : plain(number);
    return Optional.of(new GridCell(row, column, shown, number.doubleValue(), null));
  }

  private static boolean isNumber(String raw) {
    return raw != null && raw.matches("-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?");
  }

  /** Workbooks keep 31.2 as 31.199999999999999: fifteen digits are what was meant. */
  private static String plain(BigDecimal number) {
    BigDecimal meant = number.round(new MathContext(15)).stripTrailingZeros();
    return (meant.scale() < 0 ? meant.setScale(0) : meant).toPlainString();
  }

  private static boolean isDate(String format) {
    String bare =
        format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "").toLowerCase(java.util.Locale.ROOT);
    return bare.matches(".*[dy].*") && !bare.contains("general") && !bare.contains("0");
  }

  private static LocalDate date(BigDecimal serial, boolean from1904) {
    LocalDateTime origin =
        from1904 ? LocalDateTime.of(1904, 1, 1, 0, 0) : LocalDateTime.of(1899, 12, 30, 0, 0);
    return origin.plusDays(serial.longValue()).toLocalDate();
  }
}
