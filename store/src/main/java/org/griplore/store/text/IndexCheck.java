package org.griplore.store.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NoteFeed;

/** Verifies the kept text index without changing it. */
public final class IndexCheck {
  private IndexCheck() {}

  /**
   * The index's state in a sentence.
   *
   * @param good false when it is damaged; one that is missing or behind is harmless
   */
  public record Verdict(boolean good, String sentence) {}

  /** Whether the index is whole and in the archive's state. It is never lost: it is made anew. */
  public static Verdict of(Archive archive) {
    Path folder = archive.folder().resolve("index");
    if (!Files.isDirectory(folder)) {
      return new Verdict(true, "There is no text index yet: the first search makes it.");
    }
    try (Directory kept = FSDirectory.open(folder);
        NoteFeed feed = archive.noteFeed()) {
      Optional<IndexState> state = IndexState.of(kept);
      if (state.isEmpty()) {
        return new Verdict(true, "The text index is not made yet: the next search makes it.");
      }
      verifyChecksums(kept);
      return state.get().equals(IndexState.of(feed))
          ? new Verdict(true, "The text index agrees with the archive.")
          : new Verdict(
              true, "The text index is behind the archive: the next search brings it up to date.");
    } catch (IOException e) {
      return new Verdict(false, "The text index is damaged: the next search makes it anew.");
    }
  }

  /** Only checksums: the write lock is not needed, so that others may go on. */
  private static void verifyChecksums(Directory kept) throws IOException {
    try (DirectoryReader reader = DirectoryReader.open(kept)) {
      for (LeafReaderContext segment : reader.leaves()) {
        segment.reader().checkIntegrity();
      }
    }
  }
}
