package org.griplore.store.text;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;

/** A file of notes for tests of the index. */
final class Notes {
  static final Clock NOON = Clock.fixed(Instant.parse("2024-05-01T12:00:00Z"), ZoneOffset.UTC);

  private final String file;
  private final List<TestReport> reports = new ArrayList<>();

  private Notes(String file) {
    this.file = file;
  }

  static Notes in(String file) {
    return new Notes(file);
  }

  /**
   * Adds a test with notes, each {@code model|discipline|text}; model and discipline may be empty.
   */
  Notes test(String key, String title, String date, String size, SourceKind kind, String... notes) {
    Details details =
        new Details(
            title,
            date == null ? null : new TestDate(date),
            kind,
            null,
            size,
            null,
            null,
            null,
            null,
            null,
            null,
            Map.of());
    List<Note> all = new ArrayList<>();
    for (String note : notes) {
      String[] parts = note.split("\\|", 3);
      all.add(
          new Note(
              parts[0].isEmpty() ? null : parts[0],
              parts[1].isEmpty() ? null : parts[1],
              parts[2],
              new Cell("Notes", all.size() + 2, 4, parts[2])));
    }
    reports.add(new TestReport(key, details, entries(notes), all, List.of()));
    return this;
  }

  private static List<Entry> entries(String... notes) {
    List<Entry> entries = new ArrayList<>();
    for (String note : notes) {
      String model = note.substring(0, note.indexOf('|'));
      if (!model.isEmpty()) {
        entries.add(new Entry(model, null, null, List.of()));
      }
    }
    return entries;
  }

  void addTo(Archive archive) {
    addTo(archive, addition -> {});
  }

  interface More {
    void to(Addition addition);
  }

  void addTo(Archive archive, More more) {
    byte[] content = (file + reports).getBytes(StandardCharsets.UTF_8);
    try (Addition addition = archive.begin(Original.of(file, content), "notes", NOON)) {
      reports.forEach(addition::put);
      more.to(addition);
      addition.commit();
    }
  }
}
