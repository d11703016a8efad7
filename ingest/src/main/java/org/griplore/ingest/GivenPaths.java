package org.griplore.ingest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.griplore.ingest.grid.packed.SideFile;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * The files that paths stand for: themselves, or all in a folder and the folders in it.
 *
 * @param sources the files to read, those of a folder in the order of their names
 * @param passedOver files of folders that hold nothing to read: hidden ones, lock files,
 *     thumbnails, and links that lead out of the folder
 */
record GivenPaths(List<Path> sources, List<Path> passedOver) {
  /**
   * Looks at paths.
   *
   * @throws Refusal when one is not there, or is neither a file nor a folder
   */
  static GivenPaths of(List<Path> paths) {
    GivenPaths given = new GivenPaths(new ArrayList<>(), new ArrayList<>());
    for (Path path : paths) {
      if (Files.isDirectory(path)) {
        given.folder(path);
      } else if (!Files.exists(path)) {
        throw new Refusal(
            "There is no file or folder " + path + ".",
            new Problem("path", path.toString(), "a file or folder that exists"));
      } else if (!Files.isRegularFile(path)) {
        throw new Refusal(
            path + " is neither a file nor a folder, but a pipe or a device: name a file.",
            new Problem("path", path.toString(), "a file or folder"));
      } else {
        given.sources.add(path);
      }
    }
    return given;
  }

  private void folder(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      Path real = folder.toRealPath();
      for (Path file : walk.sorted().toList()) {
        boolean link = Files.isSymbolicLink(file) && !file.equals(folder);
        if (!Files.isRegularFile(file) && !link || isBeside(folder.relativize(file))) {
          continue;
        }
        if (isSide(folder.relativize(file)) || link && !leadsInside(file, real)) {
          passedOver.add(file);
        } else if (Files.isRegularFile(file)) {
          sources.add(file);
        }
      }
    } catch (IOException | UncheckedIOException e) {
      throw new Refusal(folder + " cannot be read: access is denied.", e);
    }
  }

  /** A link is followed to a file of the same folder only. */
  private static boolean leadsInside(Path link, Path real) {
    try {
      return Files.isRegularFile(link) && link.toRealPath(new LinkOption[0]).startsWith(real);
    } catch (IOException e) {
      return false;
    }
  }

  private static boolean isSide(Path relative) {
    for (Path part : relative) {
      if (SideFile.is(part.toString())) {
        return true;
      }
    }
    return false;
  }

  /** Details and notes on the folder itself stand beside sources. */
  private static boolean isBeside(Path relative) {
    String name = relative.getFileName().toString();
    return name.endsWith(Sidecar.ENDING) || name.equalsIgnoreCase("README.md");
  }
}
