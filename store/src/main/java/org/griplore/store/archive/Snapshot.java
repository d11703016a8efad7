package org.griplore.store.archive;

import java.util.List;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.TestDecision;

/**
 * Everything current in the archive at one moment, for questions over all of it. Rows refer to each
 * other by position in these lists and arrays, not by database number.
 *
 * @param stamp the archive's stamp when it was loaded
 * @param models by name
 * @param tests by date (undated last), then key
 * @param reports in the order they were added
 * @param disciplines catalogue keys that occur
 * @param units symbols of the units that occur
 * @param circumstances how figures came about, those that occur
 * @param testDecisions which tests are one that was told twice, and which are not
 * @param entries models in tests
 * @param results their figures
 */
public record Snapshot(
    long stamp,
    List<ModelRecord> models,
    List<TestRecord> tests,
    List<ReportRecord> reports,
    List<String> disciplines,
    List<String> units,
    List<Circumstance> circumstances,
    List<TestDecision> testDecisions,
    EntryColumns entries,
    ResultColumns results) {
  /** An archive of measured results on which nothing was decided. */
  public Snapshot(
      long stamp,
      List<ModelRecord> models,
      List<TestRecord> tests,
      List<ReportRecord> reports,
      List<String> disciplines,
      List<String> units,
      EntryColumns entries,
      ResultColumns results) {
    this(
        stamp,
        models,
        tests,
        reports,
        disciplines,
        units,
        List.of(Circumstance.MEASURED),
        List.of(),
        entries,
        results);
  }
}
