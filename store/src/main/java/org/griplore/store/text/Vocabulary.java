package org.griplore.store.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.FuzzyTermsEnum;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.StringHelper;

/** The words that occur in the notes of one state of the index. */
final class Vocabulary {
  private final IndexReader reader;

  Vocabulary(IndexReader reader) {
    this.reader = reader;
  }

  boolean has(String field, String word) throws IOException {
    return reader.docFreq(new Term(field, word)) > 0;
  }

  /**
   * The word nearest to one that does not occur: fewest letters inserted, left out, replaced or
   * swapped with their neighbour (Damerau 1964), and of those the one in most notes. Words of up to
   * three letters have no near word, those of up to five are near at one letter, longer at two.
   */
  Optional<String> nearest(String spelt) throws IOException {
    int letters = spelt.codePointCount(0, spelt.length());
    Terms terms = MultiTerms.getTerms(reader, IndexField.SPELT);
    if (letters < 4
        || letters > 40
        || terms == null
        || !spelt.codePoints().allMatch(Character::isLetter)) {
      return Optional.empty();
    }
    for (int edits = 1; edits <= (letters < 6 ? 1 : 2); edits++) {
      String best = null;
      int most = 0;
      TermsEnum near = new FuzzyTermsEnum(terms, new Term(IndexField.SPELT, spelt), edits, 0, true);
      for (BytesRef word = near.next(); word != null; word = near.next()) {
        if (near.docFreq() > most) {
          most = near.docFreq();
          best = word.utf8ToString();
        }
      }
      if (best != null) {
        return Optional.of(best);
      }
    }
    return Optional.empty();
  }

  /** The words that begin so, those in most notes first. */
  List<String> beginningWith(String prefix) throws IOException {
    Terms terms = MultiTerms.getTerms(reader, IndexField.SPELT);
    if (terms == null) {
      return List.of();
    }
    Map<String, Integer> notes = new HashMap<>();
    BytesRef beginning = new BytesRef(prefix);
    TermsEnum all = terms.iterator();
    if (all.seekCeil(beginning) == TermsEnum.SeekStatus.END) {
      return List.of();
    }
    for (BytesRef word = all.term();
        word != null && StringHelper.startsWith(word, beginning);
        word = all.next()) {
      notes.put(word.utf8ToString(), all.docFreq());
    }
    List<String> words = new ArrayList<>(notes.keySet());
    words.sort(
        Comparator.comparing((String word) -> -notes.get(word))
            .thenComparing(Comparator.naturalOrder()));
    return words;
  }
}
