package org.griplore.store.text;

import java.io.IOException;
import java.util.List;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.KeywordAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;

/**
 * Puts beside each folded word what is left of it without the endings of German nouns, adjectives
 * and verbs, marked so that no English stem is taken for it. Endings are taken off one after the
 * other, as Caumanns (1999) proposed for German.
 */
final class GermanForms extends TokenFilter {
  private static final String MARK = "de:";
  private static final List<String> ENDINGS = List.of("em", "er", "nd", "e", "s", "n", "t");

  /** So many letters are left at least. */
  private static final int SHORTEST = 4;

  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final KeywordAttribute keyword = addAttribute(KeywordAttribute.class);
  private final PositionIncrementAttribute step = addAttribute(PositionIncrementAttribute.class);
  private State word;

  GermanForms(TokenStream words) {
    super(words);
  }

  /** The marked form of a folded word: endings are taken off until none is left. */
  static String of(String folded) {
    String form = folded;
    for (String ending = ending(form); ending != null; ending = ending(form)) {
      form = form.substring(0, form.length() - ending.length());
    }
    return MARK + form;
  }

  private static String ending(String form) {
    for (String ending : ENDINGS) {
      if (form.endsWith(ending) && form.length() - ending.length() >= SHORTEST) {
        return ending;
      }
    }
    return null;
  }

  @Override
  public boolean incrementToken() throws IOException {
    if (word != null) {
      restoreState(word);
      word = null;
      String form = of(term.toString());
      term.setEmpty().append(form);
      step.setPositionIncrement(0);
      keyword.setKeyword(true);
      return true;
    }
    if (!input.incrementToken()) {
      return false;
    }
    word = captureState();
    return true;
  }

  @Override
  public void reset() throws IOException {
    super.reset();
    word = null;
  }
}
