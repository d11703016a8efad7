package org.griplore.ui.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Checks paths before anything is made. */
final class Paths {
  private Paths() {}

  static void refuseMissing(List<Path> paths) {
    for (Path path : paths) {
      if (!Files.exists(path)) {
        throw new Refusal(
            "There is no file or folder " + path + ".",
            new Problem("PATH", path.toString(), "a file or folder that exists"));
      }
    }
  }

  /** Refuses to write into the archive's own folder. */
  static void refuseInside(Path archive, Path folder) {
    Path inside = folder.toAbsolutePath().normalize();
    if (inside.startsWith(archive.toAbsolutePath().normalize())) {
      throw new Refusal(
          folder + " lies in the archive's own folder: choose another.",
          new Problem("DIR", folder.toString(), "a folder outside of " + archive));
    }
  }
}
