package org.griplore.store.text;

import java.io.IOException;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.uhighlight.LengthGoalBreakIterator;
import org.apache.lucene.search.uhighlight.Passage;
import org.apache.lucene.search.uhighlight.PassageFormatter;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;

/** Cuts the matching sentences out of notes whose texts are at hand. */
final class Snippets extends UnifiedHighlighter {
  private static final int MOST_PASSAGES = 2;
  private static final int LETTERS_A_PASSAGE = 160;

  private final Map<Integer, String> texts;

  private Snippets(Builder builder, Map<Integer, String> texts) {
    super(builder);
    this.texts = texts;
  }

  /**
   * The snippets of the given documents, in their order.
   *
   * @param texts the documents' words by document number
   */
  static List<Snippet> of(
      IndexSearcher searcher, Query words, int[] documents, Map<Integer, String> texts)
      throws IOException {
    if (documents.length == 0) {
      return List.of();
    }
    Builder builder =
        UnifiedHighlighter.builder(searcher, NoteAnalysis.BY_FIELD)
            .withBreakIterator(Snippets::sentences)
            .withFormatter(new Pieces())
            .withMaxNoHighlightPassages(1);
    Object[] snippets =
        new Snippets(builder, texts)
            .highlightFieldsAsObjects(
                new String[] {IndexField.WORDS}, words, documents, new int[] {MOST_PASSAGES})
            .get(IndexField.WORDS);
    List<Snippet> all = new ArrayList<>();
    for (int i = 0; i < documents.length; i++) {
      all.add(
          snippets[i] instanceof Snippet snippet ? snippet : beginning(texts.get(documents[i])));
    }
    return all;
  }

  /** A note's beginning, for queries without words. */
  static Snippet beginning(String text) {
    if (text.length() <= 2 * LETTERS_A_PASSAGE) {
      return new Snippet(List.of(new Snippet.Piece(text, false)));
    }
    int end = text.lastIndexOf(' ', 2 * LETTERS_A_PASSAGE);
    int cut = end > LETTERS_A_PASSAGE ? end : 2 * LETTERS_A_PASSAGE;
    return new Snippet(List.of(new Snippet.Piece(text.substring(0, cut) + " \u2026", false)));
  }

  private static BreakIterator sentences() {
    return LengthGoalBreakIterator.createClosestToLength(
        BreakIterator.getSentenceInstance(Locale.ROOT), LETTERS_A_PASSAGE, 0.5f);
  }

  /** The texts were read with the hits: no need to read them again. */
  @Override
  protected List<CharSequence[]> loadFieldValues(
      String[] fields, DocIdSetIterator documents, int cache) throws IOException {
    List<CharSequence[]> values = new ArrayList<>();
    for (int doc = documents.nextDoc();
        doc != DocIdSetIterator.NO_MORE_DOCS;
        doc = documents.nextDoc()) {
      values.add(new CharSequence[] {texts.get(doc)});
    }
    return values;
  }

  /** Cuts passages into pieces; a gap between passages, or before the text's end, is a dash. */
  private static final class Pieces extends PassageFormatter {
    @Override
    public Object format(Passage[] passages, String content) {
      List<Snippet.Piece> pieces = new ArrayList<>();
      int at = 0;
      for (Passage passage : passages) {
        if (passage.getStartOffset() > at) {
          plain(pieces, at == 0 ? "\u2026 " : " \u2026 ");
        } else if (at > 0) {
          plain(pieces, " ");
        }
        at = passage.getStartOffset();
        for (int i = 0; i < passage.getNumMatches(); i++) {
          int start = Math.max(at, passage.getMatchStarts()[i]);
          int end = passage.getMatchEnds()[i];
          if (end > start) {
            plain(pieces, content.substring(at, start));
            pieces.add(new Snippet.Piece(content.substring(start, end), true));
            at = end;
          }
        }
        int end = Math.max(at, passage.getEndOffset());
        plain(pieces, content.substring(at, end).stripTrailing());
        at = end;
      }
      if (at < content.length()) {
        plain(pieces, " \u2026");
      }
      return new Snippet(pieces);
    }

    private static void plain(List<Snippet.Piece> pieces, String text) {
      if (!text.isEmpty()) {
        pieces.add(new Snippet.Piece(text, false));
      }
    }
  }
}
