package org.griplore.ingest.forms;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.griplore.ingest.recognise.ColumnMap;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Sees to it that all that was said of columns found its column. */
final class MapUse {
  private final SourceContext context;
  private final Set<ColumnMap.Rule> used = new LinkedHashSet<>();
  private final List<String> headers = new ArrayList<>();

  MapUse(SourceContext context) {
    this.context = context;
  }

  /** Another table of the source. */
  void table(TableArea area) {
    for (int i = 0; i < area.heads().size(); i++) {
      TableArea.Head head = area.heads().get(i);
      context.map().of(i + 1, head).ifPresent(used::add);
      headers.add(head.text().isEmpty() ? "(no header)" : head.text());
    }
  }

  /**
   * After the last table.
   *
   * @throws Refusal when something was said of a column that no table has
   */
  void refuseUnused() {
    ColumnMap map = context.map();
    if (map.headerRow() != null && headers.isEmpty()) {
      throw wrong("headerRow", String.valueOf(map.headerRow()), "a row with rows below it");
    }
    for (ColumnMap.Rule rule : map.columns()) {
      if (!used.contains(rule)) {
        String found =
            rule.header() != null ? rule.header() : "column " + String.valueOf(rule.column());
        throw wrong(
            "columns[" + map.columns().indexOf(rule) + "]",
            found,
            headers.isEmpty()
                ? "a table whose tyres are headed by a word that the map tells, or a headerRow"
                : "one of its columns: " + String.join(" | ", headers));
      }
    }
  }

  private Refusal wrong(String where, String found, String expected) {
    return new Refusal(
        "The column map does not fit %s, %s: found \"%s\"; expected %s."
            .formatted(context.file(), where, found, expected),
        new Problem(where, found, expected));
  }
}
