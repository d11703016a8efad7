package org.griplore.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Data of others that stands beside the project and is not part of it: {@code shared/NAME} in a
 * folder above, or in the folder that the property {@code griplore.shared} or the environment's
 * {@code GRIPLORE_SHARED} names. Tests that read it are skipped, saying so, where it is absent.
 */
public final class OutsideData {
  private OutsideData() {}

  /** A folder of it: {@code reference}, {@code messy-public}; empty when it is not at hand. */
  public static Optional<Path> folder(String name) {
    String told = System.getProperty("griplore.shared", System.getenv("GRIPLORE_SHARED"));
    if (told != null) {
      return Optional.of(Path.of(told, name)).filter(Files::isDirectory);
    }
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path candidate = at.resolve("shared").resolve(name);
      if (Files.isDirectory(candidate)) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }
}
