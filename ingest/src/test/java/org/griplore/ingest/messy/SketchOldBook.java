package org.griplore.ingest.messy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.util.CellRangeAddress;

/** Writes sketches as a workbook of Excel 97: figures as numbers with their decimals. */
final class SketchOldBook {
  private SketchOldBook() {}

  static byte[] write(List<Sketch> sketches) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      Map<Integer, HSSFCellStyle> styles = new HashMap<>();
      for (Sketch sketch : sketches) {
        fill(book, book.createSheet(sketch.name()), sketch, styles);
      }
      book.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void fill(
      HSSFWorkbook book, HSSFSheet sheet, Sketch sketch, Map<Integer, HSSFCellStyle> styles) {
    List<List<String>> rows = new ArrayList<>(sketch.above());
    int top = rows.size();
    rows.addAll(sketch.table());
    rows.addAll(sketch.below());
    for (int r = 0; r < rows.size(); r++) {
      HSSFRow row = sheet.createRow(r);
      for (int c = 0; c < rows.get(r).size(); c++) {
        put(book, row, c, Sketch.plain(rows.get(r).get(c)), styles);
      }
    }
    SketchSpans spans = new SketchSpans(sketch.table());
    for (int r = 0; r < sketch.table().size(); r++) {
      for (int c = 0; c < sketch.table().get(r).size(); c++) {
        if (!spans.covered(r, c) && spans.across(r, c) * spans.down(r, c) > 1) {
          sheet.addMergedRegion(
              new CellRangeAddress(
                  top + r, top + r + spans.down(r, c) - 1, c, c + spans.across(r, c) - 1));
        }
      }
    }
  }

  private static void put(
      HSSFWorkbook book, HSSFRow row, int c, String text, Map<Integer, HSSFCellStyle> styles) {
    if (text.matches("-?\\d+(?:[.,]\\d+)?")) {
      String point = text.replace(',', '.');
      int decimals = point.contains(".") ? point.length() - point.indexOf('.') - 1 : 0;
      HSSFCellStyle style =
          styles.computeIfAbsent(
              decimals,
              n -> {
                HSSFCellStyle made = book.createCellStyle();
                made.setDataFormat(
                    book.createDataFormat().getFormat(n == 0 ? "0" : "0." + "0".repeat(n)));
                return made;
              });
      row.createCell(c).setCellValue(Double.parseDouble(point));
      row.getCell(c).setCellStyle(style);
    } else if (!text.isEmpty()) {
      row.createCell(c).setCellValue(text);
    }
  }
}
