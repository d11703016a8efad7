package org.griplore.ui.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.ingest.Intake;
import org.griplore.ingest.Preview;
import org.griplore.ingest.ReadOptions;
import org.griplore.ingest.forms.UnderstoodColumn;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.TestReport;

/** Says how files are understood, column by column; nothing is written. */
final class Explaining {
  private Explaining() {}

  /**
   * Explains files; names are settled as in the archive, where there is one.
   *
   * @param mapOut where the map goes that says what was understood; null for nowhere
   */
  static int of(
      List<Path> paths,
      ReadOptions options,
      Path folder,
      Path mapOut,
      Clock clock,
      Terminal terminal) {
    DisciplineCatalogue catalogue = CommonWords.catalogue(folder);
    if (mapOut != null && paths.size() != 1) {
      throw new Refusal("A map is of one file: explain one at a time with --map-out.");
    }
    if (Files.isRegularFile(folder.resolve("archive.db"))) {
      try (Archive archive = Archive.open(folder)) {
        return explained(
            paths, options, new Intake(archive, catalogue, clock), mapOut, catalogue, terminal);
      }
    }
    Path empty = emptyFolder();
    try (Archive archive = Archive.openOrCreate(empty)) {
      return explained(
          paths, options, new Intake(archive, catalogue, clock), mapOut, catalogue, terminal);
    } finally {
      remove(empty);
    }
  }

  private static int explained(
      List<Path> paths,
      ReadOptions options,
      Intake intake,
      Path mapOut,
      DisciplineCatalogue catalogue,
      Terminal terminal) {
    int refused = 0;
    for (Path path : Intake.sourcesOf(paths)) {
      try {
        Preview preview = intake.preview(path, options);
        write(path.getFileName().toString(), preview, terminal.out());
        if (mapOut != null) {
          MapFile.write(mapOut, preview.map(catalogue));
        }
      } catch (Refusal refusal) {
        refused++;
        terminal.err().println("griplore: " + refusal.sentence());
      }
    }
    return refused > 0 ? ExitCode.ERROR : ExitCode.ANSWERED;
  }

  private static void write(String file, Preview preview, PrintWriter out) {
    out.println(file + ": read as " + preview.form() + "; nothing was written");
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of("", "header", "cell", "meaning", "unit", "known", "for example"));
    for (UnderstoodColumn column : preview.columns()) {
      lines.add(
          List.of(
              String.valueOf(column.number()),
              column.header().isEmpty() ? "(none)" : column.header(),
              column.cell() == null ? "" : column.cell().place(),
              column.meaning(),
              column.unit(),
              column.basis(),
              String.join(" | ", column.samples())));
    }
    if (lines.size() > 1) {
      table(lines, out);
    }
    preview.reports().stream().limit(20).forEach(report -> out.println("  " + line(report)));
    if (preview.reports().size() > 20) {
      out.println("  ... and more tests");
    }
    if (!preview.lineage().isEmpty()) {
      out.println("  " + preview.lineage().size() + " models of a lineage table");
    }
    for (Finding finding : preview.findings()) {
      String place = finding.cell() == null ? "" : finding.cell().place() + ", ";
      String then = finding.kind() == Finding.Kind.ASSUMED ? ": " : "; expected ";
      out.println(
          "  %s: %s\"%s\"%s%s"
              .formatted(finding.kind().key(), place, finding.found(), then, finding.expected()));
    }
    if (!preview.complete()) {
      out.println("  Only the beginning of this long source is shown.");
    }
  }

  private static String line(TestReport report) {
    long results = report.entries().stream().mapToLong(entry -> entry.results().size()).sum();
    List<String> facts = new ArrayList<>();
    facts.add(report.entries().size() + " tyres");
    facts.add(results + " results");
    facts.add(report.notes().size() + " notes");
    Stream.of(
            report.details().date() == null ? null : report.details().date().text(),
            report.details().size(),
            report.details().vehicle(),
            report.details().kind() == null ? null : report.details().kind().key())
        .filter(java.util.Objects::nonNull)
        .forEach(facts::add);
    return "test " + report.key() + ": " + String.join(", ", facts);
  }

  private static void table(List<List<String>> lines, PrintWriter out) {
    int[] widths = new int[lines.get(0).size()];
    for (List<String> line : lines) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], Math.min(40, line.get(i).length()));
      }
    }
    for (List<String> line : lines) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String cell = line.get(i).length() > 40 ? line.get(i).substring(0, 39) + "…" : line.get(i);
        text.append("  ").append(cell).append(" ".repeat(widths[i] - cell.length()));
      }
      out.println(text.toString().stripTrailing());
    }
  }

  private static Path emptyFolder() {
    try {
      return Files.createTempDirectory("griplore-explain-");
    } catch (IOException e) {
      throw new Refusal("No temporary folder can be made: " + e.getMessage() + ".", e);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new Refusal(folder + " cannot be removed: " + e.getMessage() + ".", e);
    }
  }
}
