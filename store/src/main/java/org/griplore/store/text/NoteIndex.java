package org.griplore.store.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.TotalHits;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.Refusal;

/**
 * The text index of an archive's notes. It follows the archive: before a search it brings itself up
 * to date with what was added. It is derived, and is made anew when it is missing, damaged or of
 * another archive; where the archive's folder cannot be written it is made in memory. Safe for use
 * by several threads; while one brings it up to date, others search the state before.
 *
 * <p>Matching and ranking: BM25 over the note's words, and with less weight over the names it is
 * about (model, aliases, test, title, discipline). How many of several words must match is told in
 * {@link PlannedQuery}; when no note has that many, notes with any of them are given and {@link
 * ReadQuery} says so. A word that occurs nowhere is read as the nearest one that does.
 */
public final class NoteIndex implements AutoCloseable {
  /** Lucene remarks on the Java version when it starts: nothing that a reader of notes can mend. */
  private static final Logger LUCENE = Logger.getLogger("org.apache.lucene");

  static {
    LUCENE.setLevel(Level.SEVERE);
  }

  private static final Sort NEWEST_FIRST =
      new Sort(new SortField(IndexField.DATE, SortField.Type.LONG, true), SortField.FIELD_DOC);

  private final Archive archive;
  private final IndexFolder folder;
  private final ReentrantLock updating = new ReentrantLock();
  private volatile OpenIndex open;

  private NoteIndex(Archive archive) {
    this.archive = archive;
    this.folder = new IndexFolder(archive);
  }

  /** Told while notes are indexed. */
  public interface Progress {
    /** So many of so many notes are done. */
    void indexed(long done, long total);
  }

  /** Opens the index and brings it up to date. */
  public static NoteIndex open(Archive archive) {
    return open(archive, (done, total) -> {});
  }

  /**
   * Opens the index and brings it up to date.
   *
   * @throws Refusal when the archive cannot be read
   */
  public static NoteIndex open(Archive archive, Progress progress) {
    NoteIndex index = new NoteIndex(archive);
    index.open = index.opened(progress);
    return index;
  }

  /** An index that is open already, in the archive's state. */
  static NoteIndex of(Archive archive, OpenIndex open) {
    NoteIndex index = new NoteIndex(archive);
    index.open = open;
    return index;
  }

  /** An index in the archive's state; one that turns out damaged is made anew, once. */
  private OpenIndex opened(Progress progress) {
    try {
      return new OpenIndex(folder.upToDate(false, progress));
    } catch (IOException damaged) {
      return openedAnew(damaged, progress);
    }
  }

  /** Where the disk is full or the folder cannot be written after all, the index is in memory. */
  private OpenIndex openedAnew(IOException damage, Progress progress) {
    try {
      return new OpenIndex(folder.upToDate(true, progress));
    } catch (IOException unwritable) {
      try {
        return new OpenIndex(folder.inMemory(progress));
      } catch (IOException e) {
        e.addSuppressed(damage);
        e.addSuppressed(unwritable);
        throw new Refusal("The text index cannot be made: " + e.getMessage() + ".", e);
      }
    }
  }

  /** Brings the index up to date with the archive, unless another thread is doing so already. */
  private void follow() {
    if (open.stamp() == archive.stamp() || !updating.tryLock()) {
      return;
    }
    try {
      if (open.stamp() != archive.stamp()) {
        replace(opened((done, total) -> {}));
      }
    } finally {
      updating.unlock();
    }
  }

  private void replace(OpenIndex newer) {
    OpenIndex older = open;
    open = newer;
    older.close();
  }

  private interface Question<T> {
    T ask(IndexSearcher searcher) throws IOException;
  }

  /** Asks the index; one that turns out damaged is made anew and asked once more. */
  private <T> T ask(Question<T> question) {
    follow();
    OpenIndex asked = entered();
    try {
      return askOnce(asked, question);
    } catch (IOException damaged) {
      updating.lock();
      try {
        if (open == asked) {
          replace(openedAnew(damaged, (done, total) -> {}));
        }
      } finally {
        updating.unlock();
      }
    }
    try {
      return askOnce(entered(), question);
    } catch (IOException e) {
      throw new Refusal("The text index cannot be read: " + e.getMessage() + ".", e);
    }
  }

  /** The newest state, kept open for the caller. */
  private OpenIndex entered() {
    OpenIndex newest = open;
    while (!newest.enter()) {
      if (newest == open) {
        throw new IllegalStateException("the index is closed");
      }
      newest = open;
    }
    return newest;
  }

  private static <T> T askOnce(OpenIndex asked, Question<T> question) throws IOException {
    try {
      return question.ask(asked.searcher());
    } finally {
      asked.leave();
    }
  }

  /** The notes that match, best first. Every text has an answer. */
  public NoteHits search(NoteQuery query) {
    return ask(searcher -> hits(searcher, query));
  }

  /** How all notes that match are spread over models, disciplines and years. */
  public NoteCounts counts(NoteQuery query) {
    return ask(
        searcher -> {
          PlannedQuery plan = PlannedQuery.of(query, new Vocabulary(searcher.getIndexReader()));
          NoteCounts strict = counts(searcher, plan.strict());
          return strict.total() > 0 || plan.loose() == null
              ? strict
              : counts(searcher, plan.loose());
        });
  }

  private static NoteCounts counts(IndexSearcher searcher, org.apache.lucene.search.Query query)
      throws IOException {
    return searcher.search(query, new NoteCounter.Manager());
  }

  private static NoteHits hits(IndexSearcher searcher, NoteQuery query) throws IOException {
    PlannedQuery plan = PlannedQuery.of(query, new Vocabulary(searcher.getIndexReader()));
    int wanted = query.offset() + query.limit();
    TopDocs top =
        plan.words() == null
            ? searcher.search(plan.strict(), wanted, NEWEST_FIRST)
            : searcher.search(plan.strict(), wanted);
    ReadQuery how = plan.how();
    if (top.totalHits.value == 0 && plan.loose() != null) {
      top = searcher.search(plan.loose(), wanted);
      if (top.totalHits.value > 0) {
        List<String> remarks = new ArrayList<>(how.remarks());
        remarks.add("No note has enough of the words: these have at least one of them.");
        how = new ReadQuery(how.respelled(), remarks);
      }
    }
    return new NoteHits(
        top.totalHits.value,
        top.totalHits.relation == TotalHits.Relation.EQUAL_TO,
        page(searcher, plan, top.scoreDocs, query.offset()),
        how);
  }

  private static List<NoteHit> page(
      IndexSearcher searcher, PlannedQuery plan, ScoreDoc[] found, int offset) throws IOException {
    int count = Math.max(0, found.length - offset);
    int[] numbers = new int[count];
    List<Document> documents = new ArrayList<>(count);
    Map<Integer, String> texts = new HashMap<>();
    StoredFields stored = searcher.storedFields();
    for (int i = 0; i < count; i++) {
      numbers[i] = found[offset + i].doc;
      documents.add(stored.document(numbers[i]));
      texts.put(numbers[i], documents.get(i).get(IndexField.WORDS));
    }
    List<Snippet> snippets =
        plan.words() == null
            ? documents.stream().map(d -> Snippets.beginning(d.get(IndexField.WORDS))).toList()
            : Snippets.of(searcher, plan.words(), numbers, texts);
    List<NoteHit> hits = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      float score = plan.words() == null ? 0 : found[offset + i].score;
      hits.add(NoteDocument.hit(documents.get(i), score, snippets.get(i)));
    }
    return hits;
  }

  @Override
  public void close() {
    open.close();
  }
}
