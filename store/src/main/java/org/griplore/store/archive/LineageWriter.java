package org.griplore.store.archive;

import org.griplore.store.vocabulary.LineageRow;

/** Writes what a source says of models' descent. */
final class LineageWriter {
  private final RowWriters rows;
  private long count;

  LineageWriter(RowWriters rows) {
    this.rows = rows;
  }

  void put(LineageRow row) {
    int model = rows.model(row.name());
    Integer follows = row.follows() == null ? null : rows.model(row.follows());
    rows.lineage.add(
        rows.revision,
        model,
        row.maker(),
        row.line(),
        row.generation(),
        row.launched() == null ? null : row.launched().text(),
        row.season() == null ? null : row.season().name(),
        row.segment(),
        follows,
        String.join("|", row.aliases()),
        rows.at(row.cell()));
    count++;
  }

  long count() {
    return count;
  }
}
