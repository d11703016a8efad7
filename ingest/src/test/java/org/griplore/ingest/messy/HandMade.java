package org.griplore.ingest.messy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The files made by hand: a folder a family, and beside each file {@code NAME.truth}. A file {@code
 * NAME.details} goes into the archive with its file. A workbook is kept as {@code NAME.cells}, see
 * {@link RawBook}.
 */
final class HandMade {
  private static final Path FOLDER = Path.of("src/test/resources/org/griplore/ingest/messy");
  private static final String TRUTH = ".truth";
  private static final String CELLS = ".cells";

  private HandMade() {}

  static List<MessyFile> files() {
    List<MessyFile> files = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(FOLDER)) {
      for (Path truth : walk.filter(path -> path.toString().endsWith(TRUTH)).sorted().toList()) {
        files.add(file(truth));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static MessyFile file(Path truth) throws IOException {
    String name = truth.getFileName().toString().replace(TRUTH, "");
    Path details = truth.resolveSibling(name + ".details");
    Map<String, byte[]> beside = new HashMap<>();
    if (Files.exists(details)) {
      beside.put(details.getFileName().toString(), Files.readAllBytes(details));
    }
    try {
      return new MessyFile(
          truth.getParent().getFileName().toString(),
          name,
          content(truth.resolveSibling(name)),
          beside,
          TruthText.read(Files.readString(truth)));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(truth + ", " + e.getMessage(), e);
    }
  }

  /** A file's bytes; a workbook is made from its cells. */
  private static byte[] content(Path file) throws IOException {
    Path cells = file.resolveSibling(file.getFileName() + CELLS);
    return Files.exists(cells) ? RawBook.of(Files.readString(cells)) : Files.readAllBytes(file);
  }
}
