package org.griplore.store.text;

import java.io.IOException;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/**
 * Puts the stand-in in a stem's place. A compound that stands for several words ("Nassbremsen")
 * becomes these words, one after the other, all where the compound stands.
 */
final class TradeWordFilter extends TokenFilter {
  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final TradeWords words;
  private String[] standIn = {};
  private int next;
  private State compound;

  TradeWordFilter(TokenStream stems, TradeWords words) {
    super(stems);
    this.words = words;
  }

  @Override
  public boolean incrementToken() throws IOException {
    if (next < standIn.length) {
      restoreState(compound);
      term.setEmpty().append(standIn[next++]);
      return true;
    }
    if (!input.incrementToken()) {
      return false;
    }
    String[] found = words.standIn(term.toString());
    if (found != null) {
      standIn = found;
      next = 1;
      term.setEmpty().append(found[0]);
      if (found.length > 1) {
        compound = captureState();
      }
    }
    return true;
  }

  @Override
  public void reset() throws IOException {
    super.reset();
    standIn = new String[0];
    next = 0;
    compound = null;
  }
}
