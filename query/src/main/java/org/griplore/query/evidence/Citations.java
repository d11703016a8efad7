package org.griplore.query.evidence;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.SourceReference;
import org.griplore.store.archive.ReportRecord;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.SourceKind;

/** Gathers the reports behind an answer, each once, in the order they were first cited. */
public final class Citations {
  private final Evidence evidence;
  private final Map<Integer, SourceReference> cited = new LinkedHashMap<>();

  /** Starts with none. */
  public Citations(Evidence evidence) {
    this.evidence = evidence;
  }

  /** Cites the report that an entry stands in; returns the number to refer to it by. */
  public int citeEntry(int entry) {
    return cite(evidence.entries().report()[entry]);
  }

  /** Cites a report by position; returns the number to refer to it by. */
  public int cite(int report) {
    ReportRecord record = evidence.reports().get(report);
    return cited.computeIfAbsent(record.id(), id -> reference(record)).id();
  }

  private SourceReference reference(ReportRecord report) {
    Details test = evidence.tests().get(report.test()).details();
    String key = evidence.tests().get(report.test()).key();
    Details own = report.details();
    String title = own.title() == null ? test.title() : own.title();
    SourceKind kind = own.kind() == null ? test.kind() : own.kind();
    return new SourceReference(
        report.id(),
        title == null ? key : title,
        kind == null ? null : kind.key(),
        test.date() == null ? null : test.date().text(),
        key,
        report.file());
  }

  /** How many of the cited reports a maker supplied. */
  public long fromMakers() {
    return cited.values().stream()
        .filter(source -> SourceKind.MAKER.key().equals(source.kind()))
        .count();
  }

  /** The reports cited. */
  public List<SourceReference> list() {
    return List.copyOf(cited.values());
  }
}
