package org.griplore.store.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.lucene.document.IntField;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.griplore.store.vocabulary.SourceKind;

/** Turns a filter into queries that must all match and do not change the order. */
final class FilterQueries {
  private FilterQueries() {}

  static List<Query> of(NoteFilter filter) {
    List<Query> queries = new ArrayList<>();
    add(queries, IndexField.MODEL, filter.models());
    add(queries, IndexField.DISCIPLINE, filter.disciplines());
    add(queries, IndexField.TEST, filter.tests());
    add(queries, IndexField.SIZE_KEY, filter.sizes().stream().map(SizeParts::asked).toList());
    add(queries, IndexField.RIM, filter.rims().stream().map(String::valueOf).toList());
    add(queries, IndexField.WIDTH, filter.widths().stream().map(String::valueOf).toList());
    add(queries, IndexField.SOURCE, filter.sources().stream().map(SourceKind::name).toList());
    if (filter.fromYear() != null || filter.toYear() != null) {
      queries.add(
          IntField.newRangeQuery(
              IndexField.YEAR,
              filter.fromYear() == null ? Integer.MIN_VALUE : filter.fromYear(),
              filter.toYear() == null ? Integer.MAX_VALUE : filter.toYear()));
    }
    return queries;
  }

  private static void add(List<Query> queries, String field, Collection<String> values) {
    if (values.size() == 1) {
      String value = NoteDocument.keyword(values.iterator().next());
      queries.add(new TermQuery(new Term(field, value)));
    } else if (!values.isEmpty()) {
      queries.add(
          new TermInSetQuery(
              field,
              values.stream().map(value -> new BytesRef(NoteDocument.keyword(value))).toList()));
    }
  }
}
