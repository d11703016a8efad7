package org.griplore.store.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.store.Directory;

/** One state of the index, open for reading until the last of its readers is done. */
final class OpenIndex implements AutoCloseable {
  private final DirectoryReader reader;
  private final long stamp;

  OpenIndex(Directory directory) throws IOException {
    DirectoryReader opened;
    try {
      opened = DirectoryReader.open(directory);
    } catch (IOException | RuntimeException e) {
      directory.close();
      throw e;
    }
    this.reader = opened;
    this.stamp = Long.parseLong(reader.getIndexCommit().getUserData().get("stamp"));
    reader.getReaderCacheHelper().addClosedListener(key -> directory.close());
  }

  /** The stamp of the archive it was made from. */
  long stamp() {
    return stamp;
  }

  /** Keeps it open for one more reader, who must {@link #leave}; false when it is closed. */
  boolean enter() {
    return reader.tryIncRef();
  }

  /** Ends an {@link #enter}. */
  void leave() throws IOException {
    reader.decRef();
  }

  IndexSearcher searcher() {
    return new IndexSearcher(reader);
  }

  @Override
  public void close() {
    try {
      reader.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
