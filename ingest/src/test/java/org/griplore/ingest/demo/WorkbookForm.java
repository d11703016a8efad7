package org.griplore.ingest.demo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** A workbook: merged title row, details, a header, perhaps a row of units, figures as numbers. */
final class WorkbookForm {
  private WorkbookForm() {}

  /**
   * Writes the sheets.
   *
   * @param loose lines of free text for a last sheet; none for no such sheet
   */
  static byte[] write(List<Sheet> sheets, Lingo lingo, String looseName, List<String> loose) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "tyres", "1.0")) {
      for (Sheet sheet : sheets) {
        fill(book.newWorksheet(sheet.name()), sheet, lingo);
      }
      if (!loose.isEmpty()) {
        Worksheet last = book.newWorksheet(looseName);
        for (int r = 0; r < loose.size(); r++) {
          last.value(r, 0, loose.get(r));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void fill(Worksheet to, Sheet sheet, Lingo lingo) {
    int width = sheet.header().size();
    to.value(0, 0, sheet.title());
    to.range(0, 0, 0, width - 1).merge();
    to.range(0, 0, 0, width - 1).style().bold().set();
    int r = 1;
    for (Sheet.Detail d : sheet.details()) {
      to.value(r, 0, d.name());
      put(to, r, 1, d.value(), lingo);
      r++;
    }
    r++;
    for (int c = 0; c < width; c++) {
      to.value(r, c, sheet.header().get(c));
      to.style(r, c).bold().set();
    }
    r++;
    if (!sheet.units().isEmpty()) {
      for (int c = 0; c < width; c++) {
        if (!sheet.units().get(c).isEmpty()) {
          to.value(r, c, sheet.units().get(c));
        }
      }
      r++;
    }
    for (List<DemoCell> row : sheet.rows()) {
      for (int c = 0; c < width; c++) {
        put(to, r, c, row.get(c), lingo);
      }
      r++;
    }
    r++;
    for (String line : sheet.below()) {
      to.value(r++, 0, line);
    }
  }

  private static void put(Worksheet to, int r, int c, DemoCell cell, Lingo lingo) {
    if (cell instanceof DemoCell.Figure figure && figure.suffix().isEmpty()) {
      to.value(r, c, figure.value());
    } else if (cell instanceof DemoCell.Day day) {
      to.value(r, c, day.day());
      to.style(r, c).format("dd.mm.yyyy").set();
    } else {
      String text = cell.text(lingo);
      if (text.matches("\\d{1,2}")) {
        to.value(r, c, Integer.parseInt(text));
      } else if (!text.isEmpty()) {
        to.value(r, c, text);
      }
    }
  }
}
