package org.griplore.query.question;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.griplore.query.directory.ArchiveEntries;
import org.griplore.query.directory.Directory;
import org.griplore.query.discipline.Networks;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Names;
import org.griplore.store.archive.Archive;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/**
 * Where questions are answered: an open archive, with its evidence kept for as long as the archive
 * does not change. Safe for many threads.
 */
public final class QueryContext implements AutoCloseable {
  private final Archive archive;
  private final DisciplineCatalogue catalogue;
  private final AtomicReference<Loaded> loaded = new AtomicReference<>();

  private final Networks networks = new Networks();
  private NoteIndex notes;

  private record Loaded(Evidence evidence, Names names, Supplier<Directory> directory) {}

  /** A context at an open archive. Closing the context leaves the archive open. */
  public QueryContext(Archive archive, DisciplineCatalogue catalogue) {
    this.archive = archive;
    this.catalogue = catalogue;
  }

  /** The archive itself, for single reports, cells and findings. */
  public Archive archive() {
    return archive;
  }

  /** What the disciplines are. */
  public DisciplineCatalogue catalogue() {
    return catalogue;
  }

  /** The evidence as of now; loaded again only when the archive has changed. */
  public Evidence evidence() {
    return current().evidence();
  }

  /** The index of the notes, opened when first asked for. */
  public synchronized NoteIndex notes() {
    if (notes == null) {
      notes = NoteIndex.open(archive);
    }
    return notes;
  }

  /** The names of models and lines as of now. */
  public Names names() {
    return current().names();
  }

  /** Everything with a name, as of now. */
  public Directory directory() {
    return current().directory().get();
  }

  /** The fitted networks, kept across answers. */
  public Networks networks() {
    return networks;
  }

  private Loaded current() {
    long stamp = archive.stamp();
    Loaded known = loaded.get();
    if (known != null && known.evidence().stamp() == stamp) {
      return known;
    }
    synchronized (this) {
      known = loaded.get();
      if (known == null || known.evidence().stamp() != archive.stamp()) {
        Evidence evidence = new Evidence(archive.snapshot(), catalogue);
        known = new Loaded(evidence, new Names(evidence.models()), directoryOf(evidence));
        loaded.set(known);
      }
      return known;
    }
  }

  /** Made when first asked for: a command asks for it seldom. */
  private static Supplier<Directory> directoryOf(Evidence evidence) {
    AtomicReference<Directory> made = new AtomicReference<>();
    return () -> {
      if (made.get() == null) {
        made.compareAndSet(null, new Directory(ArchiveEntries.of(evidence)));
      }
      return made.get();
    };
  }

  @Override
  public synchronized void close() {
    if (notes != null) {
      notes.close();
    }
  }
}
