package org.griplore.store.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.database.ArchiveFailure;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.names.Decisions;
import org.griplore.store.archive.names.Descent;
import org.griplore.store.archive.names.Meanings;
import org.griplore.store.archive.names.ModelReader;
import org.griplore.store.archive.names.Settled;
import org.griplore.store.archive.writing.LineageWriter;
import org.griplore.store.archive.writing.ReportWriter;
import org.griplore.store.archive.writing.RevisionWriter;
import org.griplore.store.archive.writing.RowWriters;
import org.griplore.store.vocabulary.DraftTable;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.TestReport;

/**
 * One source on its way into the archive: whole, or not at all. Put what the source tells, then
 * {@link #commit}; closing without it leaves the archive as it was. Not thread-safe.
 */
public final class Addition implements AutoCloseable {
  private final Archive archive;
  private final Original original;
  private final WriteLock lock;
  private final Delivery delivery;
  private final Connection connection;
  private final RevisionWriter revision;
  private final RowWriters rows;
  private final ReportWriter reports;
  private final LineageWriter lineage;
  private boolean originalIsNew;
  private boolean committed;

  private Addition(
      Archive archive,
      Delivery delivery,
      Original original,
      WriteLock lock,
      Connection connection,
      RevisionWriter revision) {
    this.archive = archive;
    this.delivery = delivery;
    this.original = original;
    this.lock = lock;
    this.connection = connection;
    this.revision = revision;
    this.rows = new RowWriters(connection, revision.id());
    this.reports = new ReportWriter(connection, rows);
    this.lineage = new LineageWriter(rows);
  }

  static Addition begin(
      Archive archive,
      Delivery delivery,
      Original original,
      String form,
      Map<String, String> options,
      Clock clock) {
    WriteLock lock = WriteLock.take(archive, "nothing was added");
    Connection connection = null;
    try {
      connection = archive.ownWriting();
      connection.setAutoCommit(false);
      RevisionWriter revision =
          RevisionWriter.begin(
              connection, original, form, options, delivery.numberNow(connection), clock);
      return new Addition(archive, delivery, original, lock, connection, revision);
    } catch (SQLException e) {
      Refusal refusal = ArchiveFailure.of(e);
      release(connection, lock, refusal);
      throw refusal;
    } catch (RuntimeException e) {
      release(connection, lock, e);
      throw e;
    }
  }

  /**
   * Adds what is told of one test. A test told in several pieces is put together by its key; the
   * details of the first piece count. A second figure for the same entry and discipline is not
   * taken and becomes a finding.
   */
  public void put(TestReport report) {
    reports.put(report);
  }

  /** Adds what is known of a model's descent. */
  public void put(LineageRow row) {
    lineage.put(row);
  }

  /** Adds a table of this source that could not be decided on. */
  public void put(DraftTable draft) {
    rows.drafts.add(
        revision.id(),
        rows.sheets.number(draft.sheet()),
        draft.firstRow(),
        draft.lastRow(),
        draft.firstColumn(),
        draft.lastColumn(),
        draft.readings());
  }

  /** Adds a finding about this source. */
  public void put(Finding finding) {
    rows.finding(finding);
  }

  /**
   * Settles that a name which was taken for a model of its own means another. Both must be names of
   * models; the first keeps its entries as written and is no longer listed.
   */
  public void settleAs(String name, String means) {
    rows.take(name, means, NameTaken.TOLD);
  }

  /**
   * Says what the source's next reports mean by a name that is not the model's own: they are kept
   * under the name as written, so that another decision on it reaches them.
   */
  public void taken(String name, String means, NameTaken how) {
    rows.take(name, means, how);
  }

  /** Remembers what was said of the columns of the source's tables, for later ones like them. */
  public void remember(String layout, String map) {
    ColumnMaps.remember(connection, revision.id(), layout, map);
  }

  /**
   * Makes it all stay.
   *
   * @throws Refusal when the disk is full or the original changed meanwhile; nothing was added then
   */
  public AdditionOutcome commit() {
    try {
      reports.finish();
      rows.flush();
      boolean renamed = Meanings.settle(connection);
      Settled.after(connection, revision.id(), revision.superseded(), renamed);
      if (lineage.count() > 0 && !Decisions.standing(connection).isEmpty()) {
        Descent.refuseCircle(ModelReader.all(connection));
      }
      List<String> changes = revision.finish();
      originalIsNew = archive.originals().keep(original);
      Sql.execute(
          connection,
          "UPDATE archive_state SET stamp = stamp + 1, last_result_id = ?",
          rows.results.highest());
      connection.commit();
      committed = true;
      delivery.stored(revision.delivery());
      return new AdditionOutcome(
          revision.isFirst() ? AdditionOutcome.Status.NEW : AdditionOutcome.Status.REVISED,
          revision.id(),
          reports.tests(),
          reports.entries(),
          reports.results(),
          reports.notes(),
          lineage.count(),
          rows.findings(),
          changes);
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    }
  }

  /** Every step is taken, whatever becomes of the others: above all the lock is released. */
  @Override
  public void close() {
    try (lock;
        connection) {
      rows.close();
      if (!committed) {
        connection.rollback();
      }
    } catch (SQLException e) {
      throw ArchiveFailure.of(e);
    } finally {
      if (!committed && originalIsNew) {
        archive.originals().remove(original.sha256());
      }
    }
  }

  private static void release(Connection connection, WriteLock lock, Exception because) {
    try (lock;
        connection) {
      // whatever was begun ends here
    } catch (SQLException | Refusal e) {
      because.addSuppressed(e);
    }
  }
}
