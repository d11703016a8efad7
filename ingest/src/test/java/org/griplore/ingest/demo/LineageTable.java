package org.griplore.ingest.demo;

import java.util.ArrayList;
import java.util.List;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.ScenarioModel;

/** The lineage table: all models with predecessor and aliases. */
final class LineageTable {
  private LineageTable() {}

  static byte[] write(Scenario scenario) {
    List<String> lines = new ArrayList<>();
    lines.add("maker,line,model,generation,launched,season,segment,follows,aliases");
    for (ScenarioModel m : scenario.models()) {
      lines.add(
          Delimited.line(
              ",",
              List.of(
                  m.maker(),
                  m.line(),
                  m.name(),
                  Integer.toString(m.generation()),
                  Integer.toString(m.launched()),
                  m.season().key(),
                  m.segment(),
                  m.follows().map(f -> f.substring(m.maker().length() + 1)).orElse(""),
                  String.join("|", m.aliases()))));
    }
    return Delimited.COMMA.bytes(lines);
  }
}
