package org.griplore.ingest.messy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * Folders whose files belong to one test or to several: each is added whole to an archive of its
 * own. The truth stands in the folder's {@code all.truth}; it tells of all files together.
 */
final class SeveralFiles {
  private static final Path FOLDER = Path.of("src/test/resources/org/griplore/ingest/several");
  private static final String TRUTH = "all.truth";

  private SeveralFiles() {}

  static List<Verdict> verdicts(Path scratch) throws IOException {
    List<Verdict> verdicts = new ArrayList<>();
    for (Path folder : folders()) {
      Truth truth = TruthText.read(Files.readString(folder.resolve(TRUTH)));
      String name = folder.getFileName().toString();
      MessyFile all = new MessyFile("several", name, new byte[0], Map.of(), truth);
      verdicts.add(Verdict.of(all, added(folder, scratch.resolve(name))));
    }
    return verdicts;
  }

  private static List<Path> folders() throws IOException {
    try (Stream<Path> folders = Files.list(FOLDER)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  private static ReadBack added(Path from, Path scratch) throws IOException {
    try (Stream<Path> walk = Files.walk(from)) {
      walk.filter(Files::isRegularFile)
          .filter(file -> !file.endsWith(TRUTH))
          .forEach(file -> copy(file, scratch.resolve("files").resolve(from.relativize(file))));
    }
    return add(scratch.resolve("files"), scratch.resolve("archive"));
  }

  private static void copy(Path from, Path to) {
    try {
      Files.createDirectories(to.getParent());
      Files.copy(from, to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Adds a file or folder to a new archive, and what the archive holds then. */
  static ReadBack add(Path source, Path folder) {
    long begin = System.nanoTime();
    try (Archive archive = Archive.openOrCreate(folder)) {
      List<AddedSource> added =
          new Intake(archive, DisciplineCatalogue.standard(), Clock.systemUTC())
              .add(List.of(source), ReadOptions.NONE, (name, done, total) -> {});
      return StoredBack.of(archive, added, (System.nanoTime() - begin) / 1e9);
    }
  }
}
