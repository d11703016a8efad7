package org.griplore.query.answer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An answer with its evidence. The same object becomes a page, a terminal table, JSON, CSV or
 * Markdown. It is built by names: {@code Answer.to(inquiry).summary(text).columns(columns)} and so
 * on.
 *
 * @param <R> what one row is about
 */
public final class Answer<R> {
  private final Inquiry inquiry;
  private final String summary;
  private final List<Column<R>> columns;
  private final List<R> rows;
  private final List<Exclusion> excluded;
  private final List<String> caveats;
  private final List<SourceReference> sources;
  private final Map<WholeFigure<?>, Object> wholes;
  private final List<Footnote> footnotes;
  private final Lead earlier;
  private final Lead later;

  private Answer(Builder<R> told) {
    inquiry = told.inquiry;
    summary = told.summary;
    columns = told.columns;
    rows = told.rows;
    excluded = told.excluded;
    caveats = told.caveats;
    sources = told.sources;
    wholes = Map.copyOf(told.wholes);
    footnotes = told.footnotes;
    earlier = told.earlier;
    later = told.later;
  }

  /** Begins the answer to a question. */
  public static Start to(Inquiry inquiry) {
    return new Start(inquiry, "");
  }

  /**
   * An answer begun.
   *
   * @param inquiry the question
   * @param summary the answer in one sentence
   */
  public record Start(Inquiry inquiry, String summary) {
    /** The same with the answer in one sentence. */
    public Start summary(String sentence) {
      return new Start(inquiry, sentence);
    }

    /** Goes on with what is told of each row, in order. */
    public <R> Builder<R> columns(List<Column<R>> columns) {
      return new Builder<>(inquiry, summary, columns);
    }
  }

  /**
   * An answer in the making; what is not given is empty.
   *
   * @param <R> what one row is about
   */
  public static final class Builder<R> {
    private final Inquiry inquiry;
    private final String summary;
    private final List<Column<R>> columns;
    private List<R> rows = List.of();
    private List<Exclusion> excluded = List.of();
    private List<String> caveats = List.of();
    private List<SourceReference> sources = List.of();
    private final Map<WholeFigure<?>, Object> wholes = new LinkedHashMap<>();
    private List<Footnote> footnotes = List.of();
    private Lead earlier;
    private Lead later;

    private Builder(Inquiry inquiry, String summary, List<Column<R>> columns) {
      this.inquiry = inquiry;
      this.summary = summary;
      this.columns = List.copyOf(columns);
    }

    /** The rows; none when there is no evidence. */
    public Builder<R> rows(List<R> told) {
      rows = List.copyOf(told);
      return this;
    }

    /** What was left out, with counts. */
    public Builder<R> excluded(List<Exclusion> left) {
      excluded = List.copyOf(left);
      return this;
    }

    /** What to be careful about, in sentences. */
    public Builder<R> caveats(List<String> sentences) {
      caveats = List.copyOf(sentences);
      return this;
    }

    /** The test reports behind the rows. */
    public Builder<R> sources(List<SourceReference> cited) {
      sources = List.copyOf(cited);
      return this;
    }

    /** A figure about the rows as a whole; nothing is told when it is null. */
    public <T> Builder<R> whole(WholeFigure<T> whole, T told) {
      if (told != null) {
        wholes.put(whole, told);
      }
      return this;
    }

    /** What figures refer to by number. */
    public Builder<R> footnotes(List<Footnote> notes) {
      footnotes = List.copyOf(notes);
      return this;
    }

    /**
     * Says that the rows are one page of many, by the options {@code limit} and {@code skip}.
     *
     * @param more whether there are rows behind these
     */
    public Builder<R> page(int limit, int skip, boolean more) {
      Lead again = Lead.again(inquiry);
      earlier = skip == 0 ? null : again.with("skip", String.valueOf(Math.max(0, skip - limit)));
      later = more ? again.with("skip", String.valueOf(skip + limit)) : null;
      return this;
    }

    /** The answer. */
    public Answer<R> build() {
      return new Answer<>(this);
    }
  }

  /** The same answer with a sentence more in its summary and caveats after its own. */
  public Answer<R> adding(String sentence, List<String> more) {
    Builder<R> told =
        to(inquiry).summary((summary + " " + sentence).strip()).columns(columns).rows(rows);
    told.excluded = excluded;
    told.caveats = Stream.concat(caveats.stream(), more.stream()).toList();
    told.sources = sources;
    told.wholes.putAll(wholes);
    told.footnotes = footnotes;
    return told.build();
  }

  /** The question that was answered. */
  public Inquiry inquiry() {
    return inquiry;
  }

  /** The answer in one sentence. */
  public String summary() {
    return summary;
  }

  /** What is told of each row, in order. */
  public List<Column<R>> columns() {
    return columns;
  }

  /** The rows; none when there is no evidence. */
  public List<R> rows() {
    return rows;
  }

  /** What was left out, with counts. */
  public List<Exclusion> excluded() {
    return excluded;
  }

  /** What to be careful about, in sentences. */
  public List<String> caveats() {
    return caveats;
  }

  /** The test reports behind the rows. */
  public List<SourceReference> sources() {
    return sources;
  }

  /** Figures about the rows as a whole. */
  public Map<WholeFigure<?>, Object> wholes() {
    return wholes;
  }

  /** A figure about the rows as a whole; empty where this answer does not tell it. */
  @SuppressWarnings("unchecked") // the builder took it as this figure's
  public <T> Optional<T> whole(WholeFigure<T> whole) {
    return Optional.ofNullable((T) wholes.get(whole));
  }

  /** Where a row's figure in the column with this key leads; empty where nowhere. */
  public Optional<Lead> lead(String key, R row) {
    return columns.stream()
        .filter(column -> column.key().equals(key))
        .findFirst()
        .flatMap(column -> column.lead(row, inquiry));
  }

  /** What figures refer to by number. */
  public List<Footnote> footnotes() {
    return footnotes;
  }

  /** The rows before these, where these are one page of many; else empty. */
  public Optional<Lead> earlier() {
    return Optional.ofNullable(earlier);
  }

  /** The rows behind these, where these are one page of many; else empty. */
  public Optional<Lead> later() {
    return Optional.ofNullable(later);
  }

  /** Whether there was anything to answer from. */
  public boolean hasEvidence() {
    return !rows.isEmpty();
  }
}
