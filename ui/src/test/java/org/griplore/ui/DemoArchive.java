package org.griplore.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.store.archive.Archive;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** The demo archive, built once for all tests of a run that only read it. */
public final class DemoArchive {
  private static Path folder;

  private DemoArchive() {}

  /** The archive's folder. */
  public static synchronized Path folder() {
    if (folder == null) {
      try {
        folder = Files.createTempDirectory("griplore-test-").resolve("archive");
        build(folder);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return folder;
  }

  private static void build(Path folder) {
    Clock clock = Clock.fixed(Instant.parse("2024-12-01T00:00:00Z"), ZoneOffset.UTC);
    try (Archive archive = Archive.openOrCreate(folder)) {
      new Intake(archive, DisciplineCatalogue.standard(), clock)
          .add(List.of(Path.of("..", "demo-archive")), ReadOptions.NONE, (n, done, total) -> {});
      NoteIndex.open(archive).close();
    }
  }
}
