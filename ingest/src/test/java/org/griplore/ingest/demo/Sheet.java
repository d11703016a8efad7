package org.griplore.ingest.demo;

import java.util.ArrayList;
import java.util.List;

/**
 * A table with what stands around it.
 *
 * @param name the sheet's name in a workbook
 * @param title the title line; empty for none
 * @param details name and value pairs above the table
 * @param header the header row
 * @param units a row of units below the header; empty for none
 * @param rows the body
 * @param below lines of text below the table
 */
record Sheet(
    String name,
    String title,
    List<Detail> details,
    List<String> header,
    List<String> units,
    List<List<DemoCell>> rows,
    List<String> below) {

  /** A detail of the test: {@code Size: 205/55 R16 91V}. */
  record Detail(String name, DemoCell value) {}

  /** The same with its name as the title and nothing else above the table. */
  Sheet untitled() {
    return new Sheet(name, name, List.of(), header, units, rows, below);
  }

  /** Rows and columns swapped: the tyres stand side by side. */
  Sheet transposed() {
    List<String> names = new ArrayList<>();
    names.add(header.get(0));
    rows.forEach(row -> names.add(((DemoCell.Words) row.get(0)).text()));
    List<List<DemoCell>> turned = new ArrayList<>();
    for (int c = 1; c < header.size(); c++) {
      List<DemoCell> row = new ArrayList<>();
      row.add(DemoCell.words(header.get(c)));
      for (List<DemoCell> old : rows) {
        row.add(old.get(c));
      }
      turned.add(row);
    }
    return new Sheet(name, title, details, names, List.of(), turned, below);
  }
}
