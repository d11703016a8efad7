package org.griplore.ui.web;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.SourceReference;
import org.griplore.query.question.Question;
import org.griplore.ui.render.OutputFormat;

/**
 * A page about one answer.
 *
 * @param question the question's definition
 * @param answer the answer
 * @param form the form to ask it differently
 * @param table its rows
 * @param inner the tables inside the rows, when there are few rows
 * @param charts its plots
 * @param citation the line to cite it by
 */
public record AnswerView(
    Question<?> question,
    Answer<?> answer,
    Form form,
    TableView table,
    List<TableView.Inner> inner,
    List<Chart> charts,
    String citation) {
  private static final int ROWS_OPENED = 3;

  /** A table that is a fifth longer is not cut. */
  private static final int ROWS_SHOWN = 250;

  private static final int SOURCES_SHOWN = 100;

  /** Lays out an answer. */
  static <R> AnswerView of(
      Question<?> question, Answer<R> answer, Offers offers, Citation citation, boolean whole) {
    List<Column<R>> columns = answer.columns();
    List<R> rows = answer.rows();
    boolean cut = !whole && rows.size() > ROWS_SHOWN + ROWS_SHOWN / 5;
    return new AnswerView(
        question,
        answer,
        Form.of(question, answer.inquiry().options(), offers),
        TableView.of(columns, cut ? rows.subList(0, ROWS_SHOWN) : rows, answer.inquiry()),
        answer.rows().size() <= ROWS_OPENED
            ? TableView.inner(columns, answer.rows(), answer.inquiry())
            : List.of(),
        Charts.of(answer),
        citation.of(answer.inquiry()));
  }

  /** The same with plots of answers that the page shows beside it. */
  AnswerView with(List<Chart> others) {
    List<Chart> all = new ArrayList<>(charts);
    all.addAll(others);
    return new AnswerView(question, answer, form, table, inner, all, citation);
  }

  /** Whether anything narrows the question: then its form is closed. */
  public boolean isNarrowed() {
    return !answer.inquiry().options().isEmpty();
  }

  /** Where the rows are that the table leaves out; null when it shows them all. */
  public String allRows() {
    return table.rows().size() < answer.rows().size() ? Addresses.whole(answer.inquiry()) : null;
  }

  /** The first sources; all of them are in the other forms of the answer. */
  public List<SourceReference> sources() {
    return answer.sources().stream().limit(SOURCES_SHOWN).toList();
  }

  /** How many sources are not shown. */
  public int furtherSources() {
    return Math.max(0, answer.sources().size() - SOURCES_SHOWN);
  }

  /** The same answer in another form; the last one ends the list. */
  public record OtherForm(String label, String address, boolean last) {}

  /** The same answer in every other form. */
  public List<OtherForm> forms() {
    List<OutputFormat> formats = List.of(OutputFormat.values());
    return formats.stream()
        .map(
            format ->
                new OtherForm(
                    format.label(),
                    Addresses.form(answer.inquiry(), format.ending()),
                    format == formats.get(formats.size() - 1)))
        .toList();
  }

  /** Why something was left out; what to type about it is the command line's matter. */
  public String reason(Exclusion left) {
    return left.reason().replaceFirst("; see --.*$", "");
  }

  /** A sentence of the answer, its commands as links. */
  public List<Prose.Piece> prose(String sentence) {
    return Prose.of(sentence, answer.inquiry());
  }
}
