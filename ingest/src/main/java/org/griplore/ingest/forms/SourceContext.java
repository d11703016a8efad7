package org.griplore.ingest.forms;

import java.util.List;
import java.util.Map;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.names.NameReconciler;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.DetailLines;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * What a form needs to know beside the content.
 *
 * @param file the file's name, for keys of tests that have none
 * @param catalogue the disciplines
 * @param names settles tyres' names
 * @param given details given beside the content, by topic ({@code date}, {@code size}, {@code unit
 *     wet-braking} ...): they fill what the content does not say
 * @param givenFirst whether those details count before what the content says
 * @param map what is said of the columns of tables; it counts before what is recognised
 * @param receiver takes what is told
 */
public record SourceContext(
    String file,
    DisciplineCatalogue catalogue,
    NameReconciler names,
    Map<String, String> given,
    boolean givenFirst,
    ColumnMap map,
    Receiver receiver) {
  /** Details above a table or a text, read from its lines. */
  DetailLines details(List<List<GridCell>> lines) {
    DetailLines said = DetailLines.of(lines);
    return givenFirst ? said.without(given.keySet()) : said;
  }
}
