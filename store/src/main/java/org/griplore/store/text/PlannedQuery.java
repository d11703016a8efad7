package org.griplore.store.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;

/**
 * A query's text and filter, ready to be searched.
 *
 * <p>Of one or two words all must be in a note; of three or four, all but one; of more, six in ten.
 * Words that say little by themselves ("the", "und") do not count beside others.
 *
 * @param strict the query as described
 * @param loose any one of the words is enough; null when that is no different
 * @param words the words alone, for the snippets; null without words
 * @param how what was made of the text
 */
record PlannedQuery(Query strict, Query loose, Query words, ReadQuery how) {
  static PlannedQuery of(NoteQuery query, Vocabulary vocabulary) throws IOException {
    QueryText text = QueryText.of(query.text());
    WordQueries queries = new WordQueries(vocabulary);
    List<Query> wanted = new ArrayList<>();
    List<Query> unwanted = new ArrayList<>();
    for (QueryPart part : withoutLittleWords(text.parts())) {
      (part.excluded() ? unwanted : wanted).add(queries.of(part));
    }
    List<String> remarks = new ArrayList<>(text.remarks());
    remarks.addAll(queries.remarks());
    if (wanted.isEmpty()) {
      remarks.add("No words were looked for: the newest notes come first.");
    }
    int needed = needed(wanted.size());
    return new PlannedQuery(
        query(wanted, needed, unwanted, query.filter()),
        needed > 1 ? query(wanted, 1, unwanted, query.filter()) : null,
        wanted.isEmpty() ? null : anyOf(wanted, 1),
        new ReadQuery(queries.respelled(), remarks));
  }

  private static List<QueryPart> withoutLittleWords(List<QueryPart> parts) {
    List<QueryPart> telling = new ArrayList<>();
    for (QueryPart part : parts) {
      boolean little =
          part.kind() == QueryPart.Kind.WORD
              && !part.excluded()
              && TradeWords.stems(part.text(), NoteAnalysis.SPELT).stream()
                  .allMatch(NoteAnalysis::saysLittle);
      if (!little) {
        telling.add(part);
      }
    }
    return telling.stream().allMatch(QueryPart::excluded) ? parts : telling;
  }

  private static int needed(int words) {
    if (words <= 2) {
      return words;
    }
    return words <= 4 ? words - 1 : (words * 6 + 9) / 10;
  }

  private static Query query(
      List<Query> wanted, int needed, List<Query> unwanted, NoteFilter filter) {
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    List<Query> filters = FilterQueries.of(filter);
    if (unwanted.isEmpty() && filters.isEmpty()) {
      return wanted.isEmpty() ? new MatchAllDocsQuery() : anyOf(wanted, needed);
    }
    if (wanted.isEmpty()) {
      all.add(new MatchAllDocsQuery(), Occur.FILTER);
    } else {
      all.add(anyOf(wanted, needed), Occur.MUST);
    }
    filters.forEach(one -> all.add(one, Occur.FILTER));
    unwanted.forEach(one -> all.add(one, Occur.MUST_NOT));
    return all.build();
  }

  private static Query anyOf(List<Query> wanted, int needed) {
    if (wanted.size() == 1) {
      return wanted.get(0);
    }
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    boolean every = needed == wanted.size();
    wanted.forEach(one -> any.add(one, every ? Occur.MUST : Occur.SHOULD));
    return every ? any.build() : any.setMinimumNumberShouldMatch(needed).build();
  }
}
