package org.griplore.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Entry;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NoteFeedTest {
  @TempDir Path folder;

  private static Details details(String title, String date, String size, SourceKind kind) {
    TestDate on = date == null ? null : new TestDate(date);
    return new Details(title, on, kind, null, size, null, null, null, null, null, null, Map.of());
  }

  private static Note note(String model, String text) {
    return new Note(model, null, text, new Cell("", 1, 1, text));
  }

  private static void add(Archive archive, String file, TestReport report) {
    try (Addition addition =
        archive.begin(Figures.original(file, report.toString()), "notes", Figures.NOON)) {
      addition.put(report);
      addition.commit();
    }
  }

  /** So many sources were added by then, each in one change. */
  private static NoteFeed.Moment after(int readings) {
    return new NoteFeed.Moment(readings, readings);
  }

  private static List<String> names(NoteFeed feed, int readings) {
    List<String> all = new ArrayList<>();
    feed.forEachSince(after(readings), (note, names) -> all.add(note.text() + names));
    assertThat(feed.countSince(after(readings))).isEqualTo(all.size());
    return all;
  }

  @Test
  void whatAReportDoesNotSayComesFromItsTestAndAnEntrysOwnSizeComesFirst() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      add(
          archive,
          "notes.md",
          new TestReport(
              "T1",
              details(null, "2021", null, null),
              List.of(
                  new Entry("Ostra 3", null, "225/45 R17", List.of()),
                  new Entry("Ostra 4", null, null, List.of())),
              List.of(note("Ostra 3", "a"), note("Ostra 4", "b"), note(null, "c")),
              List.of()));
      add(
          archive,
          "figures.csv",
          new TestReport(
              "T1",
              details("Wet day", "2020-05", "205/55 R16", SourceKind.MAKER),
              List.of(),
              List.of(),
              List.of()));
      assertThat(archive.notes())
          .extracting(
              NoteRecord::text,
              NoteRecord::title,
              NoteRecord::date,
              NoteRecord::size,
              NoteRecord::source)
          .containsExactly(
              tuple("a", "Wet day", new TestDate("2021"), "225/45 R17", SourceKind.MAKER),
              tuple("b", "Wet day", new TestDate("2021"), "205/55 R16", SourceKind.MAKER),
              tuple("c", "Wet day", new TestDate("2021"), "205/55 R16", SourceKind.MAKER));
    }
  }

  @Test
  void onlyNotesThatLaterReadingsTouchAreGivenWithTheirNames() {
    try (Archive archive = Archive.openOrCreate(folder)) {
      for (int test = 1; test <= 3; test++) {
        add(
            archive,
            "file " + test,
            new TestReport(
                "T" + test,
                Details.NONE,
                List.of(new Entry("Ostra " + test, null, null, List.of())),
                List.of(note("Ostra " + test, "on " + test), note(null, "day " + test)),
                List.of()));
      }
      try (NoteFeed feed = archive.noteFeed()) {
        assertThat(names(feed, 0)).hasSize(6).contains("on 2[Ostra 2]", "day 2[Ostra 2]");
        assertThat(names(feed, 2)).containsExactly("on 3[Ostra 3]", "day 3[Ostra 3]");
        assertThat(names(feed, 3)).isEmpty();
        try (Addition addition =
            archive.begin(Figures.original("lineage", "l"), "lineage", Figures.NOON)) {
          addition.put(
              new LineageRow(
                  "Ostra 1", null, null, null, null, null, null, null, List.of("Ostra One"), null));
          addition.commit();
        }
        assertThat(names(feed, 3)).as("the feed stays at its moment").isEmpty();
      }
      try (NoteFeed feed = archive.noteFeed()) {
        assertThat(names(feed, 3)).containsExactly("on 1[Ostra 1, Ostra One]");
        assertThat(feed.testsSince(after(3))).isEmpty();
      }
    }
  }
}
