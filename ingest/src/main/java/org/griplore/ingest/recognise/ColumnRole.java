package org.griplore.ingest.recognise;

import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Unit;

/** What a column of a table holds. */
public sealed interface ColumnRole {
  /** The tyre's name, maker and model together. */
  record Tyre() implements ColumnRole {}

  /** The maker's name alone. */
  record Maker() implements ColumnRole {}

  /** The model's name without its maker. */
  record Model() implements ColumnRole {}

  /** The tyre's size, where it differs from row to row. */
  record Size() implements ColumnRole {}

  /** Results in a discipline; the unit is null where the header does not say. */
  record Value(Discipline discipline, Unit unit) implements ColumnRole {}

  /** Places in a discipline. */
  record Place(Discipline discipline) implements ColumnRole {}

  /** Standard deviations of the runs in a discipline. */
  record Spread(Discipline discipline) implements ColumnRole {}

  /** Numbers of runs in a discipline. */
  record Runs(Discipline discipline) implements ColumnRole {}

  /** Remarks on the tyre. */
  record Remark() implements ColumnRole {}

  /** Known, and not needed: a running number, the season of every row. */
  record Ignored(String why) implements ColumnRole {}

  /** Not understood. */
  record Unknown() implements ColumnRole {}
}
