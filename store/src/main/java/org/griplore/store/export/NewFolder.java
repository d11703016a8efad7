package org.griplore.store.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** A folder that is drafted beside its place and takes it when it is whole. */
final class NewFolder implements AutoCloseable {
  private final Path place;
  private final Path draft;

  private NewFolder(Path place, Path draft) {
    this.place = place;
    this.draft = draft;
  }

  /**
   * Makes a draft.
   *
   * @throws Refusal when something is in the place already
   */
  static NewFolder instead(Path folder) throws IOException {
    Path place = folder.toAbsolutePath().normalize();
    if (place.getFileName() == null || Files.exists(place) && !isEmptyFolder(place)) {
      throw new Refusal(
          "There is something in " + folder + " already: choose a new or empty folder.",
          new Problem("DIR", folder.toString(), "a folder that is not there, or is empty"));
    }
    Files.createDirectories(place.getParent());
    return new NewFolder(place, makeDraft(place));
  }

  /** Not a temporary folder of the system's: the draft becomes the place, readable as any other. */
  private static Path makeDraft(Path place) throws IOException {
    for (int i = 1; ; i++) {
      Path draft = place.resolveSibling("." + place.getFileName() + ".draft-" + i);
      if (!Files.exists(draft)) {
        return Files.createDirectory(draft);
      }
    }
  }

  private static boolean isEmptyFolder(Path place) throws IOException {
    if (!Files.isDirectory(place)) {
      return false;
    }
    try (Stream<Path> inside = Files.list(place)) {
      return inside.findAny().isEmpty();
    }
  }

  Path draft() {
    return draft;
  }

  /** Takes the place. */
  void finish() throws IOException {
    Files.deleteIfExists(place);
    Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Removes what was drafted, unless it took its place. */
  @Override
  public void close() {
    if (!Files.exists(draft)) {
      return;
    }
    try (Stream<Path> all = Files.walk(draft)) {
      List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
