package org.griplore.ui.web.page;

import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;
import org.griplore.query.answer.Inquiry;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Revision;
import org.griplore.ui.web.link.Addresses;

/** The line by which a page can be cited: what was asked, of which state of which archive. */
public final class Citation {
  private final Archive archive;
  private final AtomicReference<State> state = new AtomicReference<>();

  public Citation(Archive archive) {
    this.archive = archive;
  }

  /** The archive at one stamp, in words. */
  private record State(long stamp, String words) {}

  /** The line; what narrows the question is in its sentence and in its address. */
  public String of(Inquiry inquiry) {
    return "\u201c%s\u201d %s. %s".formatted(inquiry.sentence(), words(), Addresses.page(inquiry));
  }

  private String words() {
    long stamp = archive.stamp();
    State known = state.get();
    if (known == null || known.stamp() != stamp) {
      known = new State(stamp, words(stamp));
      state.set(known);
    }
    return known.words();
  }

  private String words(long stamp) {
    String newest =
        archive.revisions().stream()
            .map(Revision::addedAt)
            .max(java.util.Comparator.naturalOrder())
            .map(moment -> ", last added to on " + moment.atZone(ZoneOffset.UTC).toLocalDate())
            .orElse("");
    return "Griplore archive %s, state %d%s"
        .formatted(archive.folder().toAbsolutePath().normalize().getFileName(), stamp, newest);
  }
}
