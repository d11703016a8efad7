package org.griplore.store.text;

import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.DelegatingAnalyzerWrapper;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.SetKeywordMarkerFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;

/**
 * How texts become index words: lower case, accents folded, English stems (Porter 1980), trade
 * synonyms. Stop words stay in the index, so that phrases keep their distances; a query leaves them
 * out where there are better words. German words are found by the trade words and by their folded
 * form.
 */
final class NoteAnalysis {
  /** Rises when the index words of a text change: older indexes are built anew. */
  static final int EDITION = 1;

  /** Words that look like an inflection of a trade word but are none. */
  private static final CharArraySet KEPT = new CharArraySet(List.of("tired", "tiring"), false);

  private static final List<String> GERMAN_STOP_WORDS =
      List.of(
          "aber", "als", "am", "auch", "auf", "aus", "bei", "das", "dem", "den", "der", "des",
          "die", "ein", "eine", "einem", "einen", "einer", "er", "es", "fur", "im", "ist", "mit",
          "nach", "nicht", "noch", "oder", "sehr", "sich", "sie", "so", "und", "von", "wie", "zu",
          "zum", "zur");

  /** Words folded but not stemmed. */
  static final Analyzer SPELT = new Words(null, false);

  /** Index words. */
  static final Analyzer STEMS = new Words(TradeWords.read(new Words(null, true)), true);

  /** For each field its own. */
  static final Analyzer BY_FIELD =
      new DelegatingAnalyzerWrapper(Analyzer.PER_FIELD_REUSE_STRATEGY) {
        @Override
        protected Analyzer getWrappedAnalyzer(String field) {
          return field.equals(IndexField.SPELT) ? SPELT : STEMS;
        }
      };

  private static final CharArraySet STOP_WORDS = stopWords();

  private NoteAnalysis() {}

  private static CharArraySet stopWords() {
    CharArraySet words = new CharArraySet(EnglishAnalyzer.ENGLISH_STOP_WORDS_SET, false);
    words.addAll(GERMAN_STOP_WORDS);
    return words;
  }

  /** Whether a folded word says little by itself, in English or German. */
  static boolean saysLittle(String spelt) {
    return STOP_WORDS.contains(spelt);
  }

  private static final class Words extends Analyzer {
    private final TradeWords tradeWords;
    private final boolean stemmed;

    Words(TradeWords tradeWords, boolean stemmed) {
      this.tradeWords = tradeWords;
      this.stemmed = stemmed;
    }

    @Override
    protected TokenStreamComponents createComponents(String field) {
      StandardTokenizer source = new StandardTokenizer();
      TokenStream words = new ASCIIFoldingFilter(new LowerCaseFilter(source));
      words = new EnglishPossessiveFilter(words);
      if (stemmed) {
        words = new PorterStemFilter(new SetKeywordMarkerFilter(words, KEPT));
      }
      return new TokenStreamComponents(
          source, tradeWords == null ? words : new TradeWordFilter(words, tradeWords));
    }
  }
}
