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
}
