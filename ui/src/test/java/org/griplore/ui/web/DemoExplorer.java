package org.griplore.ui.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** The demo archive and its explorer, made once for all tests of a run. */
final class DemoExplorer {
  private static DemoExplorer open;

  private final QueryContext queryContext;
  private final int port;

  private DemoExplorer() throws IOException {
    Path folder = Files.createTempDirectory("griplore-web-");
    Archive archive = archive(folder, demoFolder());
    this.queryContext = new QueryContext(archive, DisciplineCatalogue.standard());
    Explorer explorer = new Explorer(queryContext);
    this.port = explorer.start(0);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  explorer.close();
                  queryContext.close();
                  archive.close();
                  remove(folder);
                }));
  }

  /** An archive in a folder, with the sources added. */
  static Archive archive(Path folder, Path... sources) {
    Archive archive = Archive.openOrCreate(folder.resolve("archive"));
    Clock clock = Clock.fixed(Instant.parse("2025-01-01T00:00:00Z"), ZoneOffset.UTC);
    List<AddedSource> added =
        new Intake(archive, DisciplineCatalogue.standard(), clock)
            .add(List.of(sources), ReadOptions.NONE, (name, done, total) -> {});
    added.stream()
        .filter(source -> source.refusal() != null)
        .findFirst()
        .ifPresent(
            source -> {
              throw source.refusal();
            });
    return archive;
  }

  static synchronized DemoExplorer get() {
    if (open == null) {
      try {
        open = new DemoExplorer();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return open;
  }

  QueryContext queryContext() {
    return queryContext;
  }

  String address(String path) {
    return "http://localhost:" + port + path;
  }

  int port() {
    return port;
  }

  private static Path demoFolder() {
    Path at = Path.of("").toAbsolutePath();
    while (at != null) {
      if (Files.isDirectory(at.resolve("demo-archive"))) {
        return at.resolve("demo-archive");
      }
      at = at.getParent();
    }
    throw new IllegalStateException("no folder demo-archive above the working directory");
  }

  static void remove(Path folder) {
    try (var files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
