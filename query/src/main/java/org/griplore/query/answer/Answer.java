package org.griplore.query.answer;

import java.util.List;
import java.util.Map;

/**
 * An answer with its evidence. The same object becomes a page, a terminal table, JSON, CSV or
 * Markdown.
 *
 * @param <R> what one row is about
 * @param inquiry the question that was answered
 * @param summary the answer in one sentence
 * @param columns what is told of each row, in order
 * @param rows the rows; none when there is no evidence
 * @param excluded what was left out, with counts
 * @param caveats what to be careful about, in sentences
 * @param sources the test reports behind the rows
 * @param relations figures about the rows as a whole, by key (may be empty)
 * @param footnotes what figures refer to by number (may be empty)
 */
public record Answer<R>(
    Inquiry inquiry,
    String summary,
    List<Column<R>> columns,
    List<R> rows,
    List<Exclusion> excluded,
    List<String> caveats,
    List<SourceReference> sources,
    Map<String, Object> relations,
    List<Footnote> footnotes) {
  /** Keeps the lists from changing. */
  public Answer {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    excluded = List.copyOf(excluded);
    caveats = List.copyOf(caveats);
    sources = List.copyOf(sources);
    relations = Map.copyOf(relations);
    footnotes = List.copyOf(footnotes);
  }

  /** An answer without footnotes. */
  public Answer(
      Inquiry inquiry,
      String summary,
      List<Column<R>> columns,
      List<R> rows,
      List<Exclusion> excluded,
      List<String> caveats,
      List<SourceReference> sources,
      Map<String, Object> relations) {
    this(inquiry, summary, columns, rows, excluded, caveats, sources, relations, List.of());
  }

  /** An answer without figures about the rows as a whole. */
  public Answer(
      Inquiry inquiry,
      String summary,
      List<Column<R>> columns,
      List<R> rows,
      List<Exclusion> excluded,
      List<String> caveats,
      List<SourceReference> sources) {
    this(inquiry, summary, columns, rows, excluded, caveats, sources, Map.of());
  }

  /** Whether there was anything to answer from. */
  public boolean hasEvidence() {
    return !rows.isEmpty();
  }
}
