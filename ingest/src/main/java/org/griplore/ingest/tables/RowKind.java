package org.griplore.ingest.tables;

import java.util.List;
import java.util.Optional;
import org.griplore.store.vocabulary.HeaderKey;

/** What a row below a table's header is. */
public enum RowKind {
  /** A tyre with its figures. */
  TYRE,
  /** A mean, best, worst, spread or count of the rows. */
  SUMMARY,
  /** The reference set, measured between the others. */
  REFERENCE,
  /** The weights of the columns in the total. */
  WEIGHT,
  /** The units of the columns. */
  UNIT,
  /** A limit or target to compare with. */
  LIMIT,
  /** A heading over the rows below it. */
  SUBHEAD,
  /** The header once more. */
  HEADER,
  /** A sentence. */
  NOTE,
  /** Cells without a name. */
  NAMELESS,
  /** Named by a measure, a number or a size, and so no tyre. */
  NO_TYRE;

  private static final List<TableWords> SUMMARIES =
      List.of(
          TableWords.MEAN,
          TableWords.MEDIAN,
          TableWords.BEST,
          TableWords.WORST,
          TableWords.MIN,
          TableWords.MAX,
          TableWords.SD,
          TableWords.COUNT,
          TableWords.RANGE,
          TableWords.SUM,
          TableWords.DIFFERENCE);

  /** What a row's name says that it is, where it says nothing but that; else empty. */
  static Optional<RowKind> named(String name) {
    List<String> words = HeaderKey.words(name);
    if (words.isEmpty()) {
      String bare = name.strip();
      return bare.equals("\u00d8") || bare.equals("\u2205")
          ? Optional.of(SUMMARY)
          : Optional.empty();
    }
    RowKind kind = null;
    int at = 0;
    while (at < words.size()) {
      RowKind found = null;
      int length = 0;
      for (TableWords word : TableWords.values()) {
        RowKind means = of(word);
        int here = means == null ? 0 : word.at(words, at);
        if (here > length) {
          length = here;
          found = means;
        }
      }
      int filler = TableWords.FILLER.at(words, at);
      if (length == 0 && filler == 0) {
        return Optional.empty();
      }
      if (length > 0 && kind == null) {
        kind = found;
      }
      at += Math.max(length, filler);
    }
    return Optional.ofNullable(kind);
  }

  private static RowKind of(TableWords word) {
    if (SUMMARIES.contains(word)) {
      return SUMMARY;
    }
    return switch (word) {
      case REFERENCE -> REFERENCE;
      case WEIGHT -> WEIGHT;
      case UNIT -> UNIT;
      case LIMIT, TARGET -> LIMIT;
      default -> null;
    };
  }
}
