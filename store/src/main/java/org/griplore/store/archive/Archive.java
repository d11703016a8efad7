package org.griplore.store.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.griplore.store.archive.check.DatabaseCheck;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Connections;
import org.griplore.store.archive.database.DatabaseFile;
import org.griplore.store.archive.database.Migrations;
import org.griplore.store.archive.database.PhraseColumns;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.kept.KeptAnswers;
import org.griplore.store.archive.kept.Retractions;
import org.griplore.store.archive.kept.StoredDrafts;
import org.griplore.store.archive.names.DecisionWriter;
import org.griplore.store.archive.names.Decisions;
import org.griplore.store.archive.names.ModelReader;
import org.griplore.store.archive.names.NameReader;
import org.griplore.store.archive.names.TestDecisions;
import org.griplore.store.archive.reading.FindingReader;
import org.griplore.store.archive.reading.LineageReader;
import org.griplore.store.archive.reading.OriginReader;
import org.griplore.store.archive.reading.ReductionReader;
import org.griplore.store.archive.reading.RevisionReader;
import org.griplore.store.archive.reading.RunReader;
import org.griplore.store.archive.reading.SnapshotLoader;
import org.griplore.store.archive.reading.StoredNoteReader;
import org.griplore.store.archive.views.ArchiveTables;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Retraction;
import org.griplore.store.vocabulary.TestDecision;

/**
 * An archive of test reports in one folder. Reading is safe from several threads at once; one
 * {@link Addition} at a time writes, on a connection of its own, and readers see it when it is
 * whole.
 */
public final class Archive implements AutoCloseable {
  private final Path folder;
  private final Connection reading;
  private final boolean writable;
  private final OriginalFiles originals;
  private long mostPages;

  private Archive(Path folder, Connection reading, boolean writable) {
    this.folder = folder;
    this.reading = reading;
    this.writable = writable;
    this.originals = new OriginalFiles(folder);
  }

  /**
   * Opens an archive that is there already. In a folder that cannot be written it is opened for
   * reading only.
   *
   * @throws Refusal when there is none, or it is damaged or too new
   */
  public static Archive open(Path folder) {
    if (!Files.isRegularFile(Connections.database(folder))) {
      DatabaseFile.refuseIncomplete(folder, Files.isWritable(folder));
      throw new Refusal(
          "There is no archive in " + folder + ": `griplore add` makes one.",
          new Problem("archive", folder.toString(), "a folder with archive.db in it"));
    }
    return opened(folder, Files.isWritable(folder));
  }

  /**
   * Opens the archive in a folder; makes the folder and an empty archive when there is none.
   *
   * @throws Refusal when the folder cannot be made or written, or holds something else
   */
  public static Archive openOrCreate(Path folder) {
    if (!Files.isRegularFile(Connections.database(folder))) {
      try {
        Files.createDirectories(folder);
      } catch (IOException e) {
        throw new Refusal(
            "No archive can be made in " + folder + ": it is no folder, or it cannot be written.",
            e,
            new Problem("archive", folder.toString(), "a folder that can be written"));
      }
    }
    return opened(folder, Files.isWritable(folder));
  }

  /** Opens the archive; in a folder that is not writable nothing is made or changed. */
  static Archive opened(Path folder, boolean writable) {
    DatabaseFile.refuseIncomplete(folder, writable);
    Connection connection = null;
    try {
      connection = writable ? Connections.writing(folder) : Connections.readingOnly(folder);
      if (writable) {
        Migrations.run(connection);
      } else {
        Migrations.refuseOtherForReading(connection);
      }
      return new Archive(folder, connection, writable);
    } catch (SQLException e) {
      closeQuietly(connection, e);
      throw ArchiveFailure.of(e);
    } catch (Refusal e) {
      closeQuietly(connection, e);
      throw e;
    }
  }

  private static void closeQuietly(Connection connection, Exception because) {
    try {
      if (connection != null) {
        connection.close();
      }
    } catch (SQLException e) {
      because.addSuppressed(e);
    }
  }

  /** The archive's folder. */
  public Path folder() {
    return folder;
  }

  /** Whether this archive can be added to. */
  public boolean writable() {
    return writable;
  }

  /** Rises with every change; equal stamps mean equal contents. */
  public long stamp() {
    return Sql.number(reading, "SELECT stamp FROM archive_state");
  }

  /** The kept original files. */
  public OriginalFiles originals() {
    return originals;
  }

  /** The current revision of a content that is in the archive already, by its hash. */
  public Optional<Revision> currentRevisionOf(String sha256) {
    return RevisionReader.first(
        reading, "WHERE r.sha256 = ? AND r.superseded_by_id IS NULL ORDER BY r.id", sha256);
  }

  /** All revisions of all sources, oldest first. */
  public List<Revision> revisions() {
    return RevisionReader.list(reading, "ORDER BY r.id");
  }

  /** The models with what is known of their descent, by name. */
  public List<ModelRecord> models() {
    return ModelReader.all(reading);
  }

  /** The models as sources alone tell of them, as if nothing had been decided, by name. */
  public List<ModelRecord> modelsAsRead() {
    return ModelReader.asRead(reading);
  }

  /** All names as sources alone use them, as if nothing had been decided, by name. */
  public List<NameRecord> namesAsRead() {
    return NameReader.asRead(reading);
  }

  /** All names of models, with what each means and how that was settled, by name. */
  public List<NameRecord> names() {
    return NameReader.all(reading);
  }

  /** Where current reports use names, by name; names that none uses are left out. */
  public List<NameUse> nameUses() {
    return NameReader.uses(reading);
  }

  /** Keys of the tests in which these names stand as written, by name. */
  public Map<String, Set<String>> testsOfNames(Set<String> names) {
    return NameReader.tests(reading, names);
  }

  /** What current lineage tables say of the model with this number, the oldest word first. */
  public List<LineageSaid> lineageOf(int model) {
    return LineageReader.of(reading, model);
  }

  /** The user's decisions that stand, in the order they were made. */
  public List<Decision> decisions() {
    return Decisions.standing(reading);
  }

  /** All decisions ever made, those taken back included, oldest first. */
  public List<Decision> decisionHistory() {
    return Decisions.history(reading);
  }

  /**
   * Takes decisions on names and descent, all or none; they hold at once, for what is stored and
   * for what is read later. What is decided so already is passed over.
   *
   * @return what was new
   * @throws Refusal when one contradicts a decision that stands, would lead in a circle, or takes
   *     back what was not decided
   */
  public List<Decision> decide(List<Decision> decisions) {
    refuseUnwritable("nothing can be decided");
    return WholeChange.make(
        this,
        "nothing was decided",
        connection -> new DecisionWriter(connection).decide(decisions));
  }

  /** The decisions on tests told twice that stand, in the order they were made. */
  public List<TestDecision> testDecisions() {
    return TestDecisions.standing(reading);
  }

  /** Takes decisions on tests told twice, all or none; the newest on a pair stands. */
  public void decideTests(List<TestDecision> decisions) {
    refuseUnwritable("nothing can be decided");
    WholeChange.make(
        this,
        "nothing was decided",
        connection -> {
          decisions.forEach(decision -> TestDecisions.write(connection, decision));
          return decisions.size();
        });
  }

  /** What stands retracted, in the order it was. */
  public List<Retraction> retractions() {
    return Retractions.standing(reading);
  }

  /** Everything ever retracted or taken back again, oldest first. */
  public List<Retraction> retractionHistory() {
    return Retractions.history(reading);
  }

  /**
   * Retracts a test or a result with a reason, or takes a retraction back.
   *
   * @throws Refusal when there is no such test, nothing stands to be taken back, or the archive
   *     cannot be written
   */
  public void retract(Retraction retraction) {
    refuseUnwritable("nothing can be retracted");
    WholeChange.make(
        this,
        "nothing was retracted",
        connection -> {
          Retractions.write(connection, retraction);
          return retraction;
        });
  }

  /** The drafts of current revisions, decided or not, in reading order. */
  public List<DraftRecord> drafts() {
    return StoredDrafts.current(reading);
  }

  /**
   * Decides an open draft.
   *
   * @param chosen which reading is taken, from 1; null when it is dismissed
   * @throws Refusal when no open draft has this number, or the archive cannot be written
   */
  public void decideDraft(int id, Integer chosen, Clock clock) {
    refuseUnwritable("nothing can be decided");
    WholeChange.make(
        this,
        "nothing was decided",
        connection -> {
          StoredDrafts.decide(connection, id, chosen, clock.instant());
          return id;
        });
  }

  /** The answers that were kept, in the order they were. */
  public List<KeptAnswer> keptAnswers() {
    return KeptAnswers.all(reading);
  }

  /**
   * Keeps an answer under a name, with the archive's stamp and newest delivery.
   *
   * @param options the question's options, as JSON
   * @param answer the whole answer, as JSON
   * @throws Refusal when another is kept under this name, or the archive cannot be written
   */
  public KeptAnswer keep(
      String name, String question, String options, String sentence, String answer, Clock clock) {
    refuseUnwritable("nothing can be kept");
    return WholeChange.make(
        this,
        "nothing was kept",
        connection ->
            KeptAnswers.keep(
                connection, name, question, options, sentence, answer, clock.instant()));
  }

  /** The plans with their forecasts and the runs of their days. */
  public PlanBook plans() {
    return new PlanBook(this, reading);
  }

  /** Everything current, loaded into columns for whole-archive questions. */
  public Snapshot snapshot() {
    return SnapshotLoader.load(reading);
  }

  /** Where one result stands, or empty when there is no such result. */
  public Optional<ResultOrigin> originOf(long result) {
    return OriginReader.read(reading, result);
  }

  /** The notes of the current reports, in the order they were added. */
  public List<NoteRecord> notes() {
    try (NoteFeed feed = noteFeed()) {
      List<NoteRecord> notes = new ArrayList<>();
      feed.forEachSince(NoteFeed.Moment.BEGINNING, (note, names) -> notes.add(note));
      return List.copyOf(notes);
    }
  }

  /** Opens the current notes as they are now, for reading them one by one. */
  public NoteFeed noteFeed() {
    return NoteFeed.open(this);
  }

  /** How many notes the current reports hold. */
  public long noteCount() {
    return Sql.number(
        reading,
        "SELECT count(*) FROM note n JOIN report p ON p.id = n.report_id"
            + " JOIN revision r ON r.id = p.revision_id AND r.superseded_by_id IS NULL");
  }

  /** How many figures the current reports hold. */
  public long figureCount() {
    return Sql.number(
        reading,
        "SELECT count(*) FROM revision r JOIN report p ON p.revision_id = r.id"
            + " JOIN entry e ON e.report_id = p.id JOIN result x ON x.entry_id = e.id"
            + " WHERE r.superseded_by_id IS NULL");
  }

  /** How many sources the archive holds. */
  public long sourceCount() {
    return Sql.number(reading, "SELECT count(*) FROM source");
  }

  /** How many findings the current revisions hold. */
  public long findingCount() {
    return Sql.number(
        reading,
        "SELECT count(*) FROM finding f"
            + " JOIN revision r ON r.id = f.revision_id AND r.superseded_by_id IS NULL");
  }

  /** What one revision said differently from the one before it, in sentences. */
  public List<String> revisionChanges(int revision) {
    return Sql.list(
        reading,
        "SELECT code, parameters FROM revision_change WHERE revision_id = ? ORDER BY position",
        row -> PhraseColumns.words(row, "code", "parameters"),
        revision);
  }

  /** Opens the figures of one revision, superseded or not, in the order they were read. */
  public FigureFeed figuresOf(int revision) {
    return FigureFeed.ofRevision(this, revision);
  }

  /** Tests as current sources other than one tell them. */
  public ToldTests toldBesides(String origin) {
    return new ToldTests(this, reading, origin);
  }

  /** Keys of the tests that a revision tells, in the order it tells them. */
  public List<String> testsOf(int revision) {
    return ToldTests.ofRevision(reading, revision);
  }

  /** The notes of one revision, superseded or not, as its reports tell them. */
  public List<StoredNote> notesOf(int revision) {
    return StoredNoteReader.ofRevision(reading, revision);
  }

  /** The logged runs of one revision, superseded or not, in the log's order. */
  public List<RunRecord> runsOf(int revision) {
    return RunReader.ofRevision(reading, revision);
  }

  /** The findings of one revision, superseded or not, in reading order. */
  public List<FindingRecord> findingsOf(int revision) {
    return FindingReader.ofRevision(reading, revision);
  }

  /** What was said of tables' columns and is remembered; the newest first. */
  public List<ColumnMapRecord> columnMaps() {
    return ColumnMaps.standing(reading);
  }

  /**
   * Forgets what was said of tables' columns; revisions that it was used for stay as they are.
   *
   * @throws Refusal when nothing of this number is remembered, or the archive cannot be written
   */
  public void forgetColumns(int id, Clock clock) {
    refuseUnwritable("nothing can be forgotten");
    WholeChange.make(
        this,
        "nothing was forgotten",
        connection -> {
          ColumnMaps.forget(connection, id, clock.instant());
          return id;
        });
  }

  /** The findings of current revisions, in reading order. */
  public List<FindingRecord> findings() {
    return FindingReader.current(reading);
  }

  /** The logged runs of one test's current reports, in the log's order. */
  public List<RunRecord> runs(int test) {
    return RunReader.ofTest(reading, test);
  }

  /** How the runs of one test's current reports were reduced; empty where none were. */
  public List<ReductionRecord> reductions(int test) {
    return ReductionReader.ofTest(reading, test);
  }

  /** Opens the archive's views as they are now; additions made meanwhile are not seen. */
  public ArchiveTables tables() {
    try {
      return ArchiveTables.on(ownReading());
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  /** Sentences on what SQLite finds wrong with pages or indexes; empty when nothing. */
  public List<String> pageProblems() {
    return problems(DatabaseCheck::pages);
  }

  /** Sentences on rows that refer to a row that is not there; empty when there are none. */
  public List<String> referenceProblems() {
    return problems(DatabaseCheck::references);
  }

  /**
   * Sentences on current figures of which a cell cannot be read; empty when there are none.
   *
   * @param done told how many figures were looked at, from time to time and at the end
   */
  public List<String> cellProblems(LongConsumer done) {
    return problems(connection -> DatabaseCheck.cells(connection, done));
  }

  private List<String> problems(Function<Connection, List<String>> check) {
    try (Connection connection = ownReading()) {
      return check.apply(connection);
    } catch (SQLException e) {
      return List.of(ArchiveFailure.of(e).sentence());
    }
  }

  /** Starts a delivery: sources that are added together and can be taken back together. */
  public Delivery delivery(Clock clock) {
    return new Delivery(this, clock, null);
  }

  /** The same with the reason for it: a correction, say. */
  public Delivery delivery(Clock clock, String reason) {
    return new Delivery(this, clock, reason);
  }

  /** Starts adding a source that is a delivery of its own; see {@link Delivery#begin}. */
  public Addition begin(Original original, String form, Clock clock) {
    return delivery(clock).begin(original, form, Map.of());
  }

  /** What {@link #undo} would take back; empty when there is nothing. */
  public Optional<TakenBack> lastAdded() {
    return Undo.of(this, false);
  }

  /**
   * Takes back the last delivery wholly: the archive is as it was before, and numbers that were
   * told meanwhile are not given again.
   *
   * @return what was taken back; empty when there was nothing
   * @throws Refusal when the archive is read-only or somebody else is adding
   */
  public Optional<TakenBack> undo() {
    return Undo.of(this, true);
  }

  void refuseUnwritable(String done) {
    if (!writable) {
      throw new Refusal(
          "The archive in " + folder + " is read-only: " + done + ".",
          new Problem("archive", folder.toString(), "a folder that can be written"));
    }
    DatabaseFile.refuseGone(folder);
  }

  /** A writing connection for one addition. */
  Connection ownWriting() throws SQLException {
    Connection connection = Connections.writing(folder);
    if (mostPages > 0) {
      Sql.number(connection, "PRAGMA max_page_count = " + mostPages);
    }
    return connection;
  }

  /**
   * Lets additions grow the database to so many pages only, as a full disk would; 0 for no limit.
   */
  void limitPages(long most) {
    mostPages = most;
  }

  /** A reading connection of the caller's own, who closes it. */
  Connection ownReading() throws SQLException {
    return writable ? Connections.writing(folder) : Connections.readingOnly(folder);
  }

  /** Opens the lock file that one writer at a time holds. */
  FileChannel lockFile() throws IOException {
    return FileChannel.open(
        folder.resolve("archive.lock"),
        java.nio.file.StandardOpenOption.CREATE,
        java.nio.file.StandardOpenOption.WRITE);
  }

  @Override
  public void close() {
    try {
      if (writable && Files.isRegularFile(Connections.database(folder))) {
        Connections.complete(reading);
      }
      reading.close();
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }
}
