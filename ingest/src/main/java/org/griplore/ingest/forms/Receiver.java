package org.griplore.ingest.forms;

import java.util.List;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestReport;

/** Takes what a source tells: an archive's addition, or a preview that keeps it in memory. */
public interface Receiver {
  /** What is told of one test, or of part of one. */
  void report(TestReport report);

  /**
   * What is told of a model's descent.
   *
   * @param means names met before that turn out to mean this model
   */
  void lineage(LineageRow row, List<String> means);

  /**
   * What is meant by a name that is not the model's own; told before the reports that use it, which
   * keep the name as written.
   */
  void name(String written, String model, NameTaken how);

  /** Something that was not understood, or was assumed. */
  void finding(Finding finding);

  /** The key of the reports that follow was not given: it is made of their title or file name. */
  default void keyNotGiven(String key) {}

  /** A table that cannot be decided on. */
  default void draft(DraftTable draft) {}

  /** The layout of a table: its headers, and who published it where that is stated. */
  default void layout(String layout) {}

  /** A column that was understood, or not; for those who show it. */
  default void column(UnderstoodColumn column) {}
}
