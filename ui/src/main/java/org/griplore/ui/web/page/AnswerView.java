package org.griplore.ui.web.page;

import java.util.ArrayList;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.answer.SourceReference;
import org.griplore.query.question.Question;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.web.chart.Chart;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.link.Prose;

/**
 * A page about one answer.
 *
 * @param <R> what one row is about
 * @param question the question's definition
 * @param answer the answer
 * @param form the form to ask it differently
 * @param table its rows
 * @param inner the tables inside the rows, when there are few rows
 * @param charts its plots
 * @param citation the line to cite it by
 * @param ways where else to look, each with its address
 */
public record AnswerView<R>(
    Question<R> question,
    Answer<R> answer,
    Form form,
    TableView table,
    List<TableView.Inner> inner,
    List<Chart> charts,
    String citation,
    List<Way> ways) {
  private static final int ROWS_OPENED = 3;

  /** A table that is a fifth longer is not cut. */
  private static final int ROWS_SHOWN = 250;

  private static final int SOURCES_SHOWN = 100;

  /** Where else to look. */
  public record Way(String label, String address) {}

  /** Lays out an answer, without plots. */
  public static <R> AnswerView<R> of(
      Question<R> question, Answer<R> answer, Pages pages, boolean whole) {
    List<Column<R>> columns = answer.columns();
    List<R> rows = answer.rows();
    boolean cut = !whole && rows.size() > ROWS_SHOWN + ROWS_SHOWN / 5;
    return new AnswerView<>(
        question,
        answer,
        Form.of(question, answer.inquiry().options(), pages.offers()),
        TableView.of(columns, cut ? rows.subList(0, ROWS_SHOWN) : rows, answer.inquiry()),
        rows.size() <= ROWS_OPENED ? TableView.inner(columns, rows, answer.inquiry()) : List.of(),
        List.of(),
        pages.citation().of(answer.inquiry()),
        List.of());
  }

  /** The same with further plots. */
  public AnswerView<R> with(List<Chart> others) {
    List<Chart> all = new ArrayList<>(charts);
    all.addAll(others);
    return new AnswerView<>(question, answer, form, table, inner, all, citation, ways);
  }

  /** The same with where else to look. */
  public AnswerView<R> leadingOn(Way... others) {
    return new AnswerView<>(
        question, answer, form, table, inner, charts, citation, List.of(others));
  }

  /** The page of the rows before these; null where there is none. */
  public String earlier() {
    return answer.earlier().map(Addresses::of).orElse(null);
  }

  /** The page of the rows behind these; null where there is none. */
  public String later() {
    return answer.later().map(Addresses::of).orElse(null);
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
