package org.griplore.store.text;

import java.util.List;
import java.util.Locale;
import java.util.Set;
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
 * out where there are better words. In a note that is German by its small words, each word also
 * stands without its ending ({@link GermanForms}).
 */
final class NoteAnalysis {
  /** Rises when the index words of a text change: older indexes are built anew. */
  static final int EDITION = 2;

  /** Words that look like an inflection of a trade word but are none. */
  private static final CharArraySet KEPT = new CharArraySet(List.of("tired", "tiring"), false);

  private static final List<String> GERMAN_STOP_WORDS =
      List.of(
          "aber", "als", "am", "auch", "auf", "aus", "bei", "das", "dem", "den", "der", "des",
          "die", "ein", "eine", "einem", "einen", "einer", "er", "es", "fur", "im", "ist", "mit",
          "nach", "nicht", "noch", "oder", "sehr", "sich", "sie", "so", "und", "von", "wie", "zu",
          "zum", "zur");

  /** Small German words that are English words too. */
  private static final Set<String> ENGLISH_TOO = Set.of("am", "so", "die", "den", "des", "es");

  /** Words folded but not stemmed. */
  static final Analyzer SPELT = new Words(null, false, false);

  /** Index words. */
  static final Analyzer STEMS =
      new Words(TradeWords.read(new Words(null, true, false)), true, false);

  /** Index words of a German text. */
  private static final Analyzer GERMAN = new Words(((Words) STEMS).tradeWords, true, true);

  /** For each field its own. */
  static final Analyzer BY_FIELD =
      new DelegatingAnalyzerWrapper(Analyzer.PER_FIELD_REUSE_STRATEGY) {
        @Override
        protected Analyzer getWrappedAnalyzer(String field) {
          return field.equals(IndexField.SPELT) ? SPELT : STEMS;
        }
      };

  private static final CharArraySet STOP_WORDS = stopWords();
  private static final CharArraySet GERMAN_SIGNS = new CharArraySet(GERMAN_STOP_WORDS, false);

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

  /** The index words of a note, by its language. To be used before the next are asked for. */
  static TokenStream wordsOf(String text) {
    return (isGerman(text) ? GERMAN : STEMS).tokenStream(IndexField.WORDS, text);
  }

  /** Whether of a text's words one in nine at least is a small German word, or has an umlaut. */
  static boolean isGerman(String text) {
    int words = 0;
    int signs = 0;
    int start = -1;
    boolean umlaut = false;
    for (int i = 0; i <= text.length(); i++) {
      char c = i < text.length() ? Character.toLowerCase(text.charAt(i)) : ' ';
      if (Character.isLetter(c)) {
        start = start < 0 ? i : start;
        umlaut |= "\u00e4\u00f6\u00fc\u00df".indexOf(c) >= 0;
      } else if (start >= 0) {
        words++;
        String word = text.substring(start, i).toLowerCase(Locale.ROOT);
        signs += umlaut || !ENGLISH_TOO.contains(word) && GERMAN_SIGNS.contains(word) ? 1 : 0;
        start = -1;
        umlaut = false;
      }
    }
    return signs * 9 >= words && signs > 0;
  }

  private static final class Words extends Analyzer {
    private final TradeWords tradeWords;
    private final boolean stemmed;
    private final boolean german;

    Words(TradeWords tradeWords, boolean stemmed, boolean german) {
      this.tradeWords = tradeWords;
      this.stemmed = stemmed;
      this.german = german;
    }

    @Override
    protected TokenStreamComponents createComponents(String field) {
      StandardTokenizer source = new StandardTokenizer();
      TokenStream words = new ASCIIFoldingFilter(new LowerCaseFilter(source));
      words = new EnglishPossessiveFilter(words);
      if (german) {
        words = new GermanForms(words);
      }
      if (stemmed) {
        words = new PorterStemFilter(new SetKeywordMarkerFilter(words, KEPT));
      }
      return new TokenStreamComponents(
          source, tradeWords == null ? words : new TradeWordFilter(words, tradeWords));
    }
  }
}
