package org.griplore.ingest.forms;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.ingest.recognise.ColumnWords;

/** Our own forms, recognised by the words of their header whatever their order and language. */
public enum OwnForm {
  /** A row a run; it has all columns of a long table and more, so it is tried first. */
  RUN_LOG("run log", Set.of("discipline", "sequence", "role"), Set.of("tyre", "model")),
  /** A row a model. */
  LINEAGE("lineage", Set.of("model", "follows"), Set.of("generation", "line", "aliases")),
  /** A row a result. */
  LONG_TABLE("long table", Set.of("test", "model", "discipline"), Set.of("value", "place"));

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
}
