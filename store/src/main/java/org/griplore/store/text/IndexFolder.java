package org.griplore.store.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.LockObtainFailedException;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NoteFeed;

/**
 * Where an archive's index is kept: in its folder {@code index}; in memory where that cannot be
 * written, or while another program writes it.
 */
final class IndexFolder {
  private static final int LOCK_TRIES = 20;
  private static final long LOCK_WAIT_MS = 100;

  private final Archive archive;
  private final Path folder;

  IndexFolder(Archive archive) {
    this.archive = archive;
    this.folder = archive.folder().resolve("index");
  }

  /**
   * A directory that is in the archive's state.
   *
   * @param anew whether what is there is known to be damaged
   */
  Directory upToDate(boolean anew, NoteIndex.Progress progress) throws IOException {
    if (archive.writable() || Files.isDirectory(folder)) {
      Directory kept = FSDirectory.open(folder);
      try {
        if (!anew && isUpToDate(kept) || archive.writable() && update(kept, anew, progress)) {
          return kept;
        }
      } catch (IOException e) {
        kept.close();
        throw e;
      }
      kept.close();
    }
    return inMemory(progress);
  }

  /** A directory in the archive's state that is kept nowhere. */
  Directory inMemory(NoteIndex.Progress progress) throws IOException {
    Directory memory = new ByteBuffersDirectory();
    try (NoteFeed feed = archive.noteFeed()) {
      new IndexUpdate(memory, feed, progress).anew();
    }
    return memory;
  }

  private boolean isUpToDate(Directory kept) throws IOException {
    Optional<IndexState> state = state(kept);
    if (state.isEmpty() || state.get().stamp() != archive.stamp()) {
      return false;
    }
    try (NoteFeed feed = archive.noteFeed()) {
      return state.get().equals(IndexState.of(feed));
    }
  }

  private static Optional<IndexState> state(Directory kept) {
    try {
      return IndexState.of(kept);
    } catch (IOException damaged) {
      return Optional.empty();
    }
  }

  /** Whether the index could be brought up to date; not when another program holds its lock. */
  private boolean update(Directory kept, boolean anew, NoteIndex.Progress progress)
      throws IOException {
    for (int i = 0; i < LOCK_TRIES; i++) {
      try (NoteFeed feed = archive.noteFeed()) {
        IndexUpdate update = new IndexUpdate(kept, feed, progress);
        if (anew || state(kept).isEmpty()) {
          update.inPlaceOfDamaged();
        } else {
          update.run();
        }
        return true;
      } catch (LockObtainFailedException held) {
        pause();
        if (!anew && isUpToDate(kept)) {
          return true;
        }
      }
    }
    return false;
  }

  private static void pause() {
    try {
      Thread.sleep(LOCK_WAIT_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new IOException("interrupted while the index was in use", e));
    }
  }
}
