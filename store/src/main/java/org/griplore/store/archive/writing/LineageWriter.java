package org.griplore.store.archive.writing;

import org.griplore.store.vocabulary.LineageRow;

/** Writes what a source says of models' descent. */
public final class LineageWriter {
  private final RowWriters rows;
  private long count;

  public LineageWriter(RowWriters rows) {
    this.rows = rows;
  }

  public void put(LineageRow row) {
    int model = rows.model(row.name());
    Integer follows = row.follows() == null ? null : rows.model(row.follows());
    long id =
        rows.lineage.add(
            rows.revision,
            model,
            row.maker(),
            row.line(),
            row.generation(),
            row.launched() == null ? null : row.launched().text(),
            row.season() == null ? null : row.season().key(),
            row.segment(),
            follows,
            row.cell());
    for (int i = 0; i < row.aliases().size(); i++) {
      rows.aliases.add(id, i + 1, row.aliases().get(i));
    }
    count++;
  }

  public long count() {
    return count;
  }
}
