package org.griplore.ingest;

import java.util.List;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestReport;

/**
 * What a source would tell the archive; nothing has been written.
 *
 * @param form what it was read as
 */
public record Preview(
    String form, List<TestReport> reports, List<LineageRow> lineage, List<Finding> findings) {}
