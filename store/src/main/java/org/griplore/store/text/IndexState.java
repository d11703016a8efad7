package org.griplore.store.text;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.SegmentInfos;
import org.apache.lucene.store.Directory;
import org.griplore.store.archive.NoteFeed;
import org.griplore.store.archive.Revision;

/**
 * The state of the archive that an index was made from, as kept in the index's commit.
 *
 * @param stamp the archive's stamp
 * @param highestNote highest number of a note
 * @param revision the newest revision; 0 in a new archive
 * @param mark hash and time of that revision: another archive with the same numbers has another
 *     mark
 * @param edition edition of the analysis
 */
record IndexState(long stamp, long highestNote, int revision, String mark, int edition) {
  static IndexState of(NoteFeed feed) {
    Optional<Revision> newest = feed.newest();
    return new IndexState(
        feed.stamp(),
        feed.highestNote(),
        newest.map(Revision::id).orElse(0),
        newest.map(IndexState::mark).orElse(""),
        NoteAnalysis.EDITION);
  }

  private static String mark(Revision revision) {
    return revision.sha256() + " " + revision.addedAt();
  }

  /** The state kept in an index; empty when there is no index or it says nothing of its state. */
  static Optional<IndexState> of(Directory directory) throws IOException {
    if (!DirectoryReader.indexExists(directory)) {
      return Optional.empty();
    }
    Map<String, String> kept = SegmentInfos.readLatestCommit(directory).getUserData();
    try {
      return Optional.of(
          new IndexState(
              Long.parseLong(kept.get("stamp")),
              Long.parseLong(kept.get("highest-note")),
              Integer.parseInt(kept.get("revision")),
              kept.getOrDefault("mark", ""),
              Integer.parseInt(kept.get("edition"))));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  NoteFeed.Moment moment() {
    return new NoteFeed.Moment(revision, stamp);
  }

  Map<String, String> kept() {
    return Map.of(
        "stamp", Long.toString(stamp),
        "highest-note", Long.toString(highestNote),
        "revision", Integer.toString(revision),
        "mark", mark,
        "edition", Integer.toString(edition));
  }

  /** Whether the archive in the feed grew out of the one this state was taken from. */
  boolean isPastOf(NoteFeed feed) {
    return edition == NoteAnalysis.EDITION
        && stamp <= feed.stamp()
        && highestNote <= feed.highestNote()
        && (revision == 0
            ? mark.isEmpty()
            : feed.revision(revision).filter(now -> mark(now).equals(mark)).isPresent());
  }
}
