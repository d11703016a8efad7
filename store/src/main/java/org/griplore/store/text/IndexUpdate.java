package org.griplore.store.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.IndexWriterConfig.OpenMode;
import org.apache.lucene.index.Term;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.Lock;
import org.griplore.store.archive.NoteFeed;
import org.griplore.store.archive.NoteRecord;

/**
 * Brings an index to the state of the archive in one commit: from the revisions added since the
 * index's state, or from the beginning when the index is of another past or edition.
 */
final class IndexUpdate {
  private static final double BUFFER_MB = 64;
  private static final int NOTES_A_REPORT = 1000;

  private final Directory directory;
  private final NoteFeed feed;
  private final NoteIndex.Progress progress;
  private long done;

  IndexUpdate(Directory directory, NoteFeed feed, NoteIndex.Progress progress) {
    this.directory = directory;
    this.feed = feed;
    this.progress = progress;
  }

  /** Updates from what the index says of itself. */
  void run() throws IOException {
    Optional<IndexState> past = IndexState.of(directory).filter(state -> state.isPastOf(feed));
    if (past.isPresent() && past.get().revision() > 0) {
      write(OpenMode.APPEND, past.get().moment());
    } else {
      anew();
    }
  }

  /** Makes the index anew, whatever is in its place. */
  void anew() throws IOException {
    write(OpenMode.CREATE, NoteFeed.Moment.BEGINNING);
  }

  /** Makes the index anew in place of one that cannot be read. */
  void inPlaceOfDamaged() throws IOException {
    try (Lock lock = directory.obtainLock(IndexWriter.WRITE_LOCK_NAME)) {
      lock.ensureValid();
      for (String file : directory.listAll()) {
        if (file.startsWith("_") || file.contains("segments")) {
          directory.deleteFile(file);
        }
      }
    }
    anew();
  }

  private void write(OpenMode mode, NoteFeed.Moment since) throws IOException {
    IndexWriterConfig config =
        new IndexWriterConfig(NoteAnalysis.BY_FIELD)
            .setOpenMode(mode)
            .setCommitOnClose(false)
            .setRAMBufferSizeMB(BUFFER_MB);
    try (IndexWriter writer = new IndexWriter(directory, config)) {
      long total = feed.countSince(since);
      if (mode == OpenMode.APPEND) {
        for (String test : feed.testsSince(since)) {
          writer.deleteDocuments(new Term(IndexField.TEST, NoteDocument.keyword(test)));
        }
      }
      feed.forEachSince(
          since,
          (note, names) -> {
            put(writer, mode, note, NoteDocument.of(note, names));
            if (++done % NOTES_A_REPORT == 0) {
              progress.indexed(done, total);
            }
          });
      progress.indexed(done, total);
      writer.setLiveCommitData(IndexState.of(feed).kept().entrySet());
      writer.commit();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static void put(IndexWriter writer, OpenMode mode, NoteRecord note, Document document) {
    try {
      if (mode == OpenMode.CREATE) {
        writer.addDocument(document);
      } else {
        writer.updateDocument(new Term(IndexField.NOTE, Long.toString(note.id())), document);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
