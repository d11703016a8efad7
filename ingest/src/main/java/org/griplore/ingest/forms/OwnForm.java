package org.griplore.ingest.forms;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.ingest.grid.Grid;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnWords;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Finding;

/** Our own forms, recognised by the words of their header whatever their order and language. */
public enum OwnForm {
  /** A row a run; it has all columns of a long table and more, so it is tried first. */
  RUN_LOG("run log", Set.of("discipline", "sequence", "role"), Set.of("tyre", "model")),
  /** A row a model. */
  LINEAGE("lineage", Set.of("model", "follows"), Set.of("generation", "line", "aliases")),
  /** A row a result. */
  LONG_TABLE("long table", Set.of("test", "model", "discipline"), Set.of("value", "place"));

  private static final String UNKNOWN = "not understood";

  private final String words;
  private final Set<String> all;
  private final Set<String> any;

  OwnForm(String words, Set<String> all, Set<String> any) {
    this.words = words;
    this.all = all;
    this.any = any;
  }

  /** What it is called. */
  public String words() {
    return words;
  }

  /** The form of a table with this header; null when it is none of ours. */
  public static OwnForm of(List<String> header) {
    Map<String, Integer> columns = columns(header);
    for (OwnForm form : values()) {
      if (columns.keySet().containsAll(form.all)
          && form.any.stream().anyMatch(columns::containsKey)) {
        return form;
      }
    }
    return null;
  }

  /** Whether a header is that of a list of results whose test is told beside it. */
  static boolean isResultList(List<String> header) {
    Map<String, Integer> columns = columns(header);
    return columns.keySet().containsAll(Set.of("model", "discipline"))
        && (columns.containsKey("value") || columns.containsKey("place"));
  }

  /** The position of each topic in a header; the first of two counts. */
  static Map<String, Integer> columns(List<String> header) {
    Map<String, Integer> columns = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      int position = i;
      ColumnWords.topic(header.get(i)).ifPresent(topic -> columns.putIfAbsent(topic, position));
    }
    if (!columns.containsKey("model") && columns.containsKey("tyre")) {
      columns.put("model", columns.get("tyre"));
    }
    return columns;
  }

  /** What each column of a header was taken for, by position. */
  static Map<Integer, String> understood(List<String> header) {
    Map<Integer, String> understood = new java.util.TreeMap<>();
    columns(header).forEach((topic, position) -> understood.put(position, topic));
    for (int i = 0; i < header.size(); i++) {
      if (!header.get(i).isBlank()) {
        understood.putIfAbsent(i, UNKNOWN);
      }
    }
    return understood;
  }

  /** Tells how the columns of a grid of one of our forms were understood. */
  static void understand(Grid grid, String form, SourceContext context) {
    List<GridCell> header = grid.rows().get(0);
    understood(header.stream().map(GridCell::text).toList())
        .forEach(
            (position, topic) -> {
              GridCell head = header.get(position);
              Cell cell = new Cell(grid.name(), head.row(), head.column(), head.text());
              List<String> samples =
                  grid.rows().stream()
                      .skip(1)
                      .flatMap(List::stream)
                      .filter(other -> other.column() == head.column())
                      .map(GridCell::text)
                      .limit(3)
                      .toList();
              context
                  .receiver()
                  .column(
                      new UnderstoodColumn(
                          position + 1,
                          head.text(),
                          cell,
                          topic,
                          "",
                          topic.equals(UNKNOWN) ? "" : "by its header",
                          samples));
              if (topic.equals(UNKNOWN)) {
                context
                    .receiver()
                    .finding(
                        new Finding(
                            Finding.Kind.NOT_READ,
                            cell,
                            head.text(),
                            "a column of the " + form,
                            "head it with one of the form's words, or leave it out"));
              }
            });
  }
}
