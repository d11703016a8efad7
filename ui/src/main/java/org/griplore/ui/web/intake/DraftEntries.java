package org.griplore.ui.web.intake;

import java.util.Map;
import org.griplore.ingest.ReadOptions;
import org.griplore.ingest.recognise.ColumnMap;

/**
 * What a user says of a draft: as it was taken, and as it was typed where something in it is wrong.
 *
 * @param options what was taken
 * @param typed the fields of a form that was not taken, by name; empty when it was
 * @param problems what is wrong, by the field's name
 */
public record DraftEntries(
    ReadOptions options, Map<String, String> typed, Map<String, String> problems) {
  public static DraftEntries of(ReadOptions options) {
    return new DraftEntries(options, Map.of(), Map.of());
  }

  ColumnMap map() {
    return options.map();
  }

  String column(int index, String part, String taken) {
    return typed.getOrDefault(part + "-" + index, taken);
  }

  String field(String name, String taken) {
    return typed.getOrDefault(name, taken);
  }
}
