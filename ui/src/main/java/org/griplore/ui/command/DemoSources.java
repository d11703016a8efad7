package org.griplore.ui.command;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.store.vocabulary.Refusal;

/** Copies the demo archive's files out of the program. */
final class DemoSources {
  private static final String RESOURCE = "/demo-archive";

  private DemoSources() {}

  static Path copyTo(Path folder) {
    try {
      URI here = DemoSources.class.getResource(RESOURCE).toURI();
      if (here.getScheme().equals("jar")) {
        try (FileSystem jar = FileSystems.newFileSystem(here, Map.of())) {
          copy(jar.getPath(RESOURCE), folder);
        }
      } else {
        copy(Path.of(here), folder);
      }
      return folder;
    } catch (IOException | URISyntaxException e) {
      throw new Refusal("The demo archive cannot be unpacked: " + e.getMessage() + ".", e);
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> walk = Files.walk(from)) {
      for (Path path : (Iterable<Path>) walk::iterator) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.copy(path, target);
        }
      }
    }
  }
}
