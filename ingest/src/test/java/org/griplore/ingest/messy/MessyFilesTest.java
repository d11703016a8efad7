package org.griplore.ingest.messy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.griplore.ingest.Intake;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measures how messy files are read. Each is read in an archive that knows nothing yet, and what it
 * would bring is compared with what the file truly says; a file of several tests is added, as tests
 * may meet in the archive only. The figures of each family stand in {@code target/messy-files.txt},
 * what is amiss with each file in {@code target/messy-faults.txt}, the files themselves in {@code
 * target/messy}. With {@code -Dgriplore.messy.only=TEXT} only files whose family and name hold the
 * text are read, and nothing is asserted; with {@code -Dgriplore.messy.record=raise} the floors are
 * raised to what is reached; {@code anew} writes what is reached, be it less.
 */
class MessyFilesTest {
  private static final Path TARGET = Path.of("target");
  private static final String RECORD = System.getProperty("griplore.messy.record", "");
  private static final int SAMPLED = 16;
  private static final int DRAWN_OF_EACH = 12;
  private static final String ONLY = System.getProperty("griplore.messy.only", "");

  @Test
  void areReadAsFarAsWasReached(@TempDir Path folder) throws IOException {
    List<Verdict> verdicts = verdicts(folder);
    if (ONLY.isEmpty()) {
      verdicts.addAll(SeveralFiles.verdicts(folder.resolve("several")));
    }
    List<FamilyFigures> figures = figures(verdicts);
    Files.createDirectories(TARGET);
    String table =
        "family                     "
            + String.join(", ", FamilyFigures.COLUMNS)
            + "\n"
            + figures.stream().map(FamilyFigures::line).collect(Collectors.joining("\n", "", "\n"));
    Files.writeString(TARGET.resolve("messy-files.txt"), table);
    Files.writeString(TARGET.resolve("messy-faults.txt"), FaultList.of(verdicts));
    System.out.printf(
        Locale.ROOT,
        "%s%.1f s; what is amiss: %s%n",
        table,
        figures.get(figures.size() - 1).seconds(),
        TARGET.resolve("messy-faults.txt").toAbsolutePath());
    if (!ONLY.isEmpty()) {
      return;
    }
    Floors floors = Floors.read();
    if (!RECORD.isEmpty()) {
      floors.record(figures, RECORD.equals("anew"));
    } else {
      assertThat(floors.below(figures)).isEmpty();
      assertThat(Floors.documented()).isEqualTo(floors.table());
    }
  }

  @Test
  void whatIsShownIsWhatIsStored(@TempDir Path folder) throws IOException {
    List<MessyFile> all = all();
    try (Archive archive = Archive.openOrCreate(folder.resolve("empty"))) {
      Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
      for (int i = 0; i < all.size(); i += SAMPLED) {
        Path own = folder.resolve("file-" + i);
        Path path = all.get(i).writeTo(own.resolve("files"));
        ReadBack shown = ReadBack.of(intake, path);
        if (shown.tests().size() > 1) {
          continue;
        }
        ReadBack stored = SeveralFiles.add(path, own.resolve("archive"));
        assertThat(stored.figures())
            .extracting(ReadBack.Read::words, ReadBack.Read::marks)
            .as(all.get(i).toString())
            .containsExactlyInAnyOrderElementsOf(
                shown.figures().stream()
                    .filter(read -> !shown.draft())
                    .map(read -> tuple(read.words(), read.marks()))
                    .toList());
      }
    }
  }

  private static List<Verdict> verdicts(Path folder) throws IOException {
    List<Verdict> verdicts = new ArrayList<>();
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      Intake intake = new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC());
      for (MessyFile file : all()) {
        if (file.toString().contains(ONLY)) {
          String family = file.family().replaceAll("\\W+", "-");
          Path path = file.writeTo(TARGET.resolve("messy").resolve(family));
          ReadBack shown = ReadBack.of(intake, path);
          Path own = folder.resolve("archive-" + verdicts.size());
          verdicts.add(
              Verdict.of(file, shown.tests().size() > 1 ? SeveralFiles.add(path, own) : shown));
        }
      }
    }
    return verdicts;
  }

  private static List<MessyFile> all() {
    return Stream.of(HandMade.files(), DrawnFiles.files(DRAWN_OF_EACH))
        .flatMap(List::stream)
        .toList();
  }

  private static List<FamilyFigures> figures(List<Verdict> verdicts) {
    Map<String, List<Verdict>> families =
        verdicts.stream()
            .collect(
                Collectors.groupingBy(v -> v.file().family(), TreeMap::new, Collectors.toList()));
    List<FamilyFigures> figures = new ArrayList<>();
    families.forEach((family, own) -> figures.add(FamilyFigures.of(family, own)));
    figures.add(FamilyFigures.of("all", verdicts));
    return figures;
  }
}
