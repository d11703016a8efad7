package org.griplore.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.FindingRecord;
import org.griplore.store.archive.NoteRecord;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;

/** What an archive holds, as sorted lines of text that can be compared. */
final class ArchiveLines {
  private ArchiveLines() {}

  /** {@code key | date | kind | publication | size | season | vehicle | kg | venue | title}. */
  static List<String> tests(Archive archive) {
    return archive.snapshot().tests().stream().map(ArchiveLines::line).sorted().toList();
  }

  private static String line(TestRecord test) {
    Details d = test.details();
    return Stream.of(
            test.key(),
            d.date(),
            d.kind() == null ? null : d.kind().key(),
            d.publication(),
            d.size(),
            d.season() == null ? null : d.season().key(),
            d.vehicle(),
            d.vehicleMassKg() == null ? null : number(d.vehicleMassKg()) + " kg",
            d.venue(),
            d.title())
        .map(part -> Objects.toString(part, "-"))
        .collect(Collectors.joining(" | "));
  }

  /** {@code test | model | size | discipline | value unit | place | spread | runs}. */
  static List<String> results(Archive archive) {
    Snapshot s = archive.snapshot();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < s.results().count(); i++) {
      int entry = s.results().entry()[i];
      String size = s.entries().size()[entry];
      StringBuilder line =
          new StringBuilder()
              .append(s.tests().get(s.entries().test()[entry]).key())
              .append(" | ")
              .append(s.models().get(s.entries().model()[entry]).name())
              .append(size == null ? "" : " in " + size)
              .append(" | ")
              .append(s.disciplines().get(s.results().discipline()[i]))
              .append(" | ");
      double value = s.results().value()[i];
      line.append(
          Double.isNaN(value)
              ? "no value"
              : number(value) + " " + s.units().get(s.results().unit()[i]));
      if (s.results().place()[i] > 0) {
        line.append(" | place ").append(s.results().place()[i]);
      }
      if (!Double.isNaN(s.results().spread()[i])) {
        line.append(" | spread ").append(number(s.results().spread()[i]));
      }
      if (s.results().runs()[i] > 0) {
        line.append(" | runs ").append(s.results().runs()[i]);
      }
      lines.add(line.toString());
    }
    lines.sort(null);
    return lines;
  }

  /** {@code test | model | discipline | text}. */
  static List<String> notes(Archive archive) {
    return archive.notes().stream().map(ArchiveLines::line).sorted().toList();
  }

  private static String line(NoteRecord note) {
    return note.test()
        + " | "
        + Objects.toString(note.model(), "-")
        + " | "
        + Objects.toString(note.discipline(), "-")
        + " | "
        + note.text();
  }

  /** {@code KIND | place | text found}. */
  static List<String> findings(Archive archive) {
    return archive.findings().stream().map(ArchiveLines::line).sorted().toList();
  }

  private static String line(FindingRecord record) {
    Cell cell = record.finding().cell();
    return record.finding().kind()
        + " | "
        + (cell == null ? "-" : cell.place())
        + " | "
        + record.finding().found()
        + " | "
        + record.finding().expected();
  }

  /** Six significant digits: enough to tell two figures of a test report apart. */
  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.6g", value);
    return text.contains("e")
        ? text
        : text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }
}
