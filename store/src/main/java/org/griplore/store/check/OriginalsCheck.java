package org.griplore.store.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Revision;
import org.griplore.store.vocabulary.Refusal;

/** Verifies the kept original files against the revisions made of them. */
public final class OriginalsCheck {
  private OriginalsCheck() {}

  /** Sentences on originals that are missing or changed; empty when every one is as it was. */
  public static List<String> contents(Archive archive, LongConsumer done) {
    List<String> problems = new ArrayList<>();
    Set<String> checked = new HashSet<>();
    long count = 0;
    for (Revision revision : archive.revisions()) {
      if (checked.add(revision.sha256())) {
        String problem = problem(archive, revision);
        if (problem != null) {
          problems.add(problem);
        }
      }
      done.accept(++count);
    }
    return problems;
  }

  private static String problem(Archive archive, Revision revision) {
    Path kept = archive.originals().path(revision.sha256());
    if (!Files.isRegularFile(kept)) {
      return "The original of " + revision.name() + " is missing: " + kept + ".";
    }
    try {
      return archive.originals().intact(revision.sha256())
          ? null
          : "The original of " + revision.name() + " is not what was read: " + kept + " changed.";
    } catch (Refusal e) {
      return "The original of " + revision.name() + " cannot be read: " + kept + ".";
    }
  }

  /**
   * Files among the originals that no revision was made of, as an addition leaves them that was
   * killed at its end. They do no harm.
   */
  public static List<Path> orphans(Archive archive) {
    Path folder = archive.folder().resolve("originals");
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    Set<Path> known = new HashSet<>();
    archive.revisions().forEach(revision -> known.add(archive.originals().path(revision.sha256())));
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> Files.isRegularFile(file) && !known.contains(file))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
