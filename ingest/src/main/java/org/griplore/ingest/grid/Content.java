package org.griplore.ingest.grid;

import java.util.List;

/** What a file holds once it is read. */
public sealed interface Content {
  /**
   * One or more tables.
   *
   * @param form what it was read as, in a word or two: {@code workbook}, {@code page}, {@code
   *     JSON}, {@code Markdown} or {@code delimited text}
   * @param grids in the order of the source
   */
  record Tables(String form, List<Grid> grids) implements Content {
    /** Keeps the list from changing. */
    public Tables {
      grids = List.copyOf(grids);
    }
  }

  /** Text without tables: plain or Markdown. */
  record Prose(List<Line> lines) implements Content {
    /** Keeps the list from changing. */
    public Prose {
      lines = List.copyOf(lines);
    }
  }

  /** A line of text with its number from 1. */
  record Line(int number, String text) {}
}
