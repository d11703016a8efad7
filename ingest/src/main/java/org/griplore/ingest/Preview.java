package org.griplore.ingest;

import java.util.List;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestReport;

/**
 * What a source would tell the archive; nothing has been written.
 *
 * @param form what it was read as
 * @param columns its tables' columns as they were understood, in the source's order; none for notes
 * @param complete whether all of it is here; of a long source only the beginning is kept
 */
public record Preview(
    String form,
    List<UnderstoodColumn> columns,
    List<TestReport> reports,
    List<LineageRow> lineage,
    List<Finding> findings,
    boolean complete) {
  /** So many reports, lineage rows and findings at most are kept of each. */
  public static final int KEPT = 2000;
}
