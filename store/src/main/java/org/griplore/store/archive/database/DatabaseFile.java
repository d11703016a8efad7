package org.griplore.store.archive.database;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Tells states of the file {@code archive.db} that SQLite would pass over. */
public final class DatabaseFile {
  private DatabaseFile() {}

  /**
   * Refuses an empty file beside kept originals, and originals without a file, both of which would
   * be taken for a new archive, and, in a folder that cannot be written, a database whose last
   * changes still stand in its write-ahead log, which would not be seen.
   */
  public static void refuseIncomplete(Path folder, boolean writable) {
    Path database = Connections.database(folder);
    if (Files.isRegularFile(database)
        && bytes(database) == 0
        && Files.exists(folder.resolve("originals"))) {
      throw new Refusal(
          "archive.db is damaged: it is empty, yet the archive has originals: restore it from a"
              + " backup.",
          new Problem(database.toString(), "0 bytes", "an archive"));
    }
    if (Files.notExists(database) && holdsFiles(folder.resolve("originals"))) {
      throw new Refusal(
          "archive.db is missing, yet the archive has originals: restore it from a backup, or add"
              + " the originals to an archive in another folder.",
          new Problem(database.toString(), "no file", "an archive"));
    }
    Path log = folder.resolve("archive.db-wal");
    if (!writable && Files.isRegularFile(log) && bytes(log) > 0) {
      throw new Refusal(
          "The archive in "
              + folder
              + " was not closed properly and cannot be completed in a read-only folder: open it"
              + " once where it can be written.",
          new Problem(log.toString(), bytes(log) + " bytes", "no changes left to take over"));
    }
  }

  /** Refuses to write to an archive whose database was removed while it was open. */
  public static void refuseGone(Path folder) {
    if (!Files.isRegularFile(Connections.database(folder))) {
      throw new Refusal(
          "The archive in " + folder + " is gone: its archive.db was removed; nothing was added.",
          new Problem("archive", folder.toString(), "a folder with archive.db in it"));
    }
  }

  private static boolean holdsFiles(Path folder) {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.anyMatch(Files::isRegularFile);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static long bytes(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
