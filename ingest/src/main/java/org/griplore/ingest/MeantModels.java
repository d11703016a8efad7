package org.griplore.ingest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.TestReport;

/** Shows the models that a report's names mean, where a report keeps the names as written. */
final class MeantModels {
  private final Map<String, String> models = new HashMap<>();

  void add(String written, String model) {
    models.put(written, model);
  }

  TestReport in(TestReport report) {
    return models.isEmpty()
        ? report
        : new TestReport(
            report.key(),
            report.details(),
            report.entries().stream().map(this::in).toList(),
            report.notes().stream().map(this::in).toList(),
            report.runs(),
            List.of(),
            report.weights());
  }

  private Entry in(Entry entry) {
    return entry.meaning(model(entry.model()));
  }

  private Note in(Note note) {
    return note.model() == null
        ? note
        : new Note(model(note.model()), note.discipline(), note.text(), note.cell());
  }

  private String model(String name) {
    return models.getOrDefault(name, name);
  }
}
