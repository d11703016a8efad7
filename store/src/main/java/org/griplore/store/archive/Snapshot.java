package org.griplore.store.archive;

import java.util.List;

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
    EntryColumns entries,
    ResultColumns results) {}
