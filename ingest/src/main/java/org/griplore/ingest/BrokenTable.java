package org.griplore.ingest;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.griplore.ingest.forms.OwnForm;
import org.griplore.ingest.grid.Content;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.HeaderReader;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * Text that begins with a table's header, though its lines do not make out a table: nothing follows
 * the header, a quote is never closed, a field is endless. It is no note, and must not become one.
 */
final class BrokenTable {
  private static final char[] DELIMITERS = {'\t', ';', ',', '|'};
  private static final int LONGEST_HEAD = 40;

  private BrokenTable() {}

  /** What parts its columns; empty when the text does not begin with a table's header. */
  static OptionalInt delimiter(Content.Prose prose, DisciplineCatalogue catalogue) {
    List<String> lines =
        prose.lines().stream().map(Content.Line::text).filter(line -> !line.isBlank()).toList();
    for (char delimiter : DELIMITERS) {
      List<String> heads =
          Arrays.stream(lines.get(0).split(Pattern.quote(String.valueOf(delimiter))))
              .map(String::strip)
              .toList();
      long cut = lines.stream().skip(1).filter(line -> line.indexOf(delimiter) >= 0).count();
      if (heads.size() > 1
          && 2 * cut >= lines.size() - 1
          && heads.stream().allMatch(head -> head.length() <= LONGEST_HEAD)
          && (OwnForm.of(heads) != null || isHeader(heads, catalogue))) {
        return OptionalInt.of(delimiter);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean isHeader(List<String> heads, DisciplineCatalogue catalogue) {
    HeaderReader headers = new HeaderReader(catalogue, ColumnMap.NONE);
    List<ColumnRole> roles = heads.stream().map(head -> headers.role(head, null)).toList();
    return roles.stream()
            .anyMatch(r -> r instanceof ColumnRole.Tyre || r instanceof ColumnRole.Model)
        && roles.stream()
            .anyMatch(r -> r instanceof ColumnRole.Value || r instanceof ColumnRole.Place);
  }
}
