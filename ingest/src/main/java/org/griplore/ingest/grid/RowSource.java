package org.griplore.ingest.grid;

import java.io.IOException;

/** Rows one after another, each as texts by column. */
public interface RowSource {
  /** Goes to the next row; says whether there is one. */
  boolean next() throws IOException;

  /** How many columns the row has. */
  int count();

  /** The text of a column, from 0; empty where there is none. */
  String field(int index);

  /** The row number, from 1, of a column's cell, as a person counts it in the source. */
  int rowOf(int index);

  /** Columns are counted from 1 in the source: the number of the column at an index. */
  default int columnOf(int index) {
    return index + 1;
  }
}
