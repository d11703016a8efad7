package org.griplore.ingest.messy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes sketches as a workbook: figures as numbers with their decimals, joined cells merged. */
final class SketchBook {
  private SketchBook() {}

  static byte[] write(List<Sketch> sketches) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "tyres", "1.0")) {
      for (Sketch sketch : sketches) {
        fill(book.newWorksheet(sketch.name()), sketch);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void fill(Worksheet sheet, Sketch sketch) {
    List<List<String>> rows = new ArrayList<>(sketch.above());
    int top = rows.size();
    rows.addAll(sketch.table());
    rows.addAll(sketch.below());
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < rows.get(r).size(); c++) {
        put(sheet, r, c, rows.get(r).get(c));
      }
    }
    for (int r = 0; r < sketch.table().size(); r++) {
      for (int c = 0; c < sketch.table().get(r).size(); c++) {
        merge(sheet, sketch, top, r, c);
      }
    }
  }

  /** Puts a text, or a number where the text is nothing else. */
  static void put(Worksheet sheet, int r, int c, String text) {
    String plain = Sketch.plain(text);
    if (plain.matches("-?\\d+(?:[.,]\\d+)?")) {
      String point = plain.replace(',', '.');
      sheet.value(r, c, Double.parseDouble(point));
      int decimals = point.contains(".") ? point.length() - point.indexOf('.') - 1 : 0;
      sheet.style(r, c).format(decimals == 0 ? "0" : "0." + "0".repeat(decimals)).set();
    } else if (!plain.isEmpty()) {
      sheet.value(r, c, plain);
    }
  }

  private static void merge(Worksheet sheet, Sketch sketch, int top, int r, int c) {
    SketchSpans spans = new SketchSpans(sketch.table());
    if (spans.covered(r, c)) {
      return;
    }
    int right = c + spans.across(r, c) - 1;
    int bottom = r + spans.down(r, c) - 1;
    if (right > c || bottom > r) {
      sheet.range(top + r, c, top + bottom, right).merge();
    }
  }
}
