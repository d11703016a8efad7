package org.griplore.store.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SynonymQuery;
import org.apache.lucene.search.TermQuery;

/**
 * Turns parts of a query into Lucene queries over the words and, counting less, the names that a
 * note is about.
 */
final class WordQueries {
  private static final float WEIGHT_OF_NAMES = 0.4f;
  private static final float TIE = 0.1f;
  private static final int MOST_BEGINNINGS = 48;

  /** A word that was typed as one may be several in the index, near each other in any order. */
  private static final int NEAR = 2;

  private final Vocabulary vocabulary;
  private final List<ReadQuery.Respelling> respelled = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  WordQueries(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  List<ReadQuery.Respelling> respelled() {
    return respelled;
  }

  List<String> remarks() {
    return remarks;
  }

  Query of(QueryPart part) throws IOException {
    return switch (part.kind()) {
      case WORD -> word(part.text(), !part.excluded());
      case PHRASE -> inBothFields(TradeWords.stems(part.text(), NoteAnalysis.STEMS), 0);
      case PREFIX -> beginnings(part.text());
    };
  }

  private Query word(String typed, boolean mayRespell) throws IOException {
    List<String> stems = TradeWords.stems(typed, NoteAnalysis.STEMS);
    List<String> spelt = TradeWords.stems(typed, NoteAnalysis.SPELT);
    if (mayRespell && !occurs(stems) && !occursInGerman(spelt)) {
      List<String> read = new ArrayList<>(spelt);
      boolean changed = false;
      for (int i = 0; i < spelt.size(); i++) {
        if (!occurs(TradeWords.stems(spelt.get(i), NoteAnalysis.STEMS))) {
          Optional<String> nearest = vocabulary.nearest(spelt.get(i));
          changed |= nearest.isPresent();
          read.set(i, nearest.orElse(spelt.get(i)));
        }
      }
      if (changed) {
        String readAs = String.join(" ", read);
        respelled.add(new ReadQuery.Respelling(typed, readAs));
        stems = TradeWords.stems(readAs, NoteAnalysis.STEMS);
        spelt = read;
      }
    }
    return stems.size() == 1 ? formsOf(spelt, stems) : inBothFields(stems, NEAR);
  }

  /** A word and, where German notes have it with another ending, that too. */
  private Query formsOf(List<String> spelt, List<String> stems) throws IOException {
    if (!occursInGerman(spelt)) {
      return inBothFields(stems, NEAR);
    }
    return either(
        oneOf(IndexField.WORDS, Set.of(stems.get(0), GermanForms.of(spelt.get(0)))),
        inField(IndexField.ABOUT, stems, 0));
  }

  private boolean occursInGerman(List<String> spelt) throws IOException {
    return spelt.size() == 1 && vocabulary.has(IndexField.WORDS, GermanForms.of(spelt.get(0)));
  }

  private boolean occurs(List<String> stems) throws IOException {
    for (String stem : stems) {
      if (!vocabulary.has(IndexField.WORDS, stem) && !vocabulary.has(IndexField.ABOUT, stem)) {
        return false;
      }
    }
    return true;
  }

  private Query beginnings(String typed) throws IOException {
    List<String> spelt = TradeWords.stems(typed, NoteAnalysis.SPELT);
    if (spelt.size() != 1) {
      return word(typed, true);
    }
    List<String> words = vocabulary.beginningWith(spelt.get(0));
    if (words.size() > MOST_BEGINNINGS) {
      remarks.add(
          "Of the "
              + words.size()
              + " words that begin with \u201c"
              + typed
              + "\u201d the "
              + MOST_BEGINNINGS
              + " most frequent were looked for.");
      words = words.subList(0, MOST_BEGINNINGS);
    }
    Set<String> stems = new LinkedHashSet<>();
    for (String word : words) {
      List<String> stem = TradeWords.stems(word, NoteAnalysis.STEMS);
      if (stem.size() == 1) {
        stems.add(stem.get(0));
      }
    }
    Set<String> ofNames = new LinkedHashSet<>();
    for (String stem : stems) {
      if (vocabulary.has(IndexField.ABOUT, stem)) {
        ofNames.add(stem);
      }
    }
    return either(anyOf(IndexField.WORDS, stems), anyOf(IndexField.ABOUT, ofNames));
  }

  private static Query oneOf(String field, Set<String> stems) {
    SynonymQuery.Builder query = new SynonymQuery.Builder(field);
    stems.forEach(stem -> query.addTerm(new Term(field, stem)));
    return stems.isEmpty() ? null : query.build();
  }

  /** Rarer words count more: unlike one word's forms, these are words of their own. */
  private static Query anyOf(String field, Set<String> stems) {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    stems.forEach(stem -> query.add(new TermQuery(new Term(field, stem)), Occur.SHOULD));
    return stems.isEmpty() ? null : query.build();
  }

  private Query inBothFields(List<String> stems, int slop) throws IOException {
    return either(inField(IndexField.WORDS, stems, slop), inField(IndexField.ABOUT, stems, slop));
  }

  /** The query in one field; null when it cannot match there. */
  private Query inField(String field, List<String> stems, int slop) throws IOException {
    for (String stem : stems) {
      if (!vocabulary.has(field, stem)) {
        return null;
      }
    }
    if (stems.size() == 1) {
      return new TermQuery(new Term(field, stems.get(0)));
    }
    return stems.isEmpty() ? null : new PhraseQuery(slop, field, stems.toArray(String[]::new));
  }

  private static Query either(Query inWords, Query inNames) {
    if (inWords == null && inNames == null) {
      return new MatchNoDocsQuery("no note has it");
    }
    if (inNames == null) {
      return inWords;
    }
    Query lighter = new BoostQuery(inNames, WEIGHT_OF_NAMES);
    return inWords == null ? lighter : new DisjunctionMaxQuery(List.of(inWords, lighter), TIE);
  }
}
