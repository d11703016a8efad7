package org.griplore.ingest.recognise;

import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Unit;

/** What a column of a table holds. */
public sealed interface ColumnRole {
  /** What it holds, in a few words. */
  default String words() {
    if (this instanceof Value value) {
      return value.discipline().key();
    } else if (this instanceof Place place) {
      return "place, " + place.discipline().key();
    } else if (this instanceof Spread spread) {
      return "spread, " + spread.discipline().key();
    } else if (this instanceof Runs runs) {
      return "runs, " + runs.discipline().key();
    } else if (this instanceof Run run) {
      return "run, " + run.discipline().key();
    } else if (this instanceof Ignored ignored) {
      return "not taken: " + ignored.why();
    } else if (this instanceof Unknown) {
      return "not understood";
    }
    return getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
  }

  /** The tyre's name, maker and model together. */
  record Tyre() implements ColumnRole {}

  /** The maker's name alone. */
  record Maker() implements ColumnRole {}

  /** The model's name without its maker. */
  record Model() implements ColumnRole {}

  /** The product line's name, without the generation. */
  record Line() implements ColumnRole {}

  /** The generation or version, which ends the model's name. */
  record Generation() implements ColumnRole {}

  /** The tyre's size, where it differs from row to row. */
  record Size() implements ColumnRole {}

  /**
   * Results in a discipline.
   *
   * @param unit the unit; null where the header does not say
   * @param better which way the header says is better; null where it does not say
   * @param setting under what they came about
   */
  record Value(Discipline discipline, Unit unit, Direction better, Setting setting)
      implements ColumnRole {
    /** A header that says the discipline and perhaps the unit only. */
    public Value(Discipline discipline, Unit unit) {
      this(discipline, unit, null, Setting.PLAIN);
    }
  }

  /** Single runs in a discipline, of which the mean counts. */
  record Run(Discipline discipline, Unit unit, Setting setting) implements ColumnRole {}

  /** Places in a discipline. */
  record Place(Discipline discipline, Setting setting) implements ColumnRole {
    /** Places by results of which nothing more is said. */
    public Place(Discipline discipline) {
      this(discipline, Setting.PLAIN);
    }
  }

  /** Standard deviations of the runs in a discipline. */
  record Spread(Discipline discipline, Setting setting) implements ColumnRole {
    /** Of results of which nothing more is said. */
    public Spread(Discipline discipline) {
      this(discipline, Setting.PLAIN);
    }
  }

  /** Numbers of runs in a discipline. */
  record Runs(Discipline discipline, Setting setting) implements ColumnRole {
    /** Of results of which nothing more is said. */
    public Runs(Discipline discipline) {
      this(discipline, Setting.PLAIN);
    }
  }

  /** New or worn, where it differs from row to row. */
  record State() implements ColumnRole {}

  /** Remarks on the tyre. */
  record Remark() implements ColumnRole {}

  /** Known, and not needed: a running number, the season of every row. */
  record Ignored(String why) implements ColumnRole {}

  /** Not understood. */
  record Unknown() implements ColumnRole {}
}
