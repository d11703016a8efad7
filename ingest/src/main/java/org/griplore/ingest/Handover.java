package org.griplore.ingest;

import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.function.Consumer;
import org.griplore.ingest.forms.Receiver;
import org.griplore.store.archive.NameTaken;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestReport;

/**
 * Lets one thread read while another writes: what the reader tells is handed over in order through
 * a queue of limited length, so that a source of any size needs little memory.
 */
final class Handover implements Receiver {
  private static final int WAITING = 512;

  /** Something told, to be told on to the receiver that writes. */
  private interface StoredFact {
    void to(Receiver writer);
  }

  private static final StoredFact END = writer -> {};

  private final BlockingQueue<StoredFact> queue = new ArrayBlockingQueue<>(WAITING);
  private volatile boolean abandoned;

  private Handover() {}

  /** Raised in the reader when nobody takes what it tells any more. */
  private static final class Abandoned extends RuntimeException {}

  /**
   * Runs a reader in a thread of its own and tells the writer, in this thread, what it tells.
   *
   * @throws RuntimeException what the reader or the writer throws
   */
  static void between(Consumer<Receiver> reader, Receiver writer) {
    Handover handover = new Handover();
    RuntimeException[] failed = new RuntimeException[1];
    Error[] broken = new Error[1];
    Thread thread =
        new Thread(
            () -> {
              try {
                reader.accept(handover);
              } catch (Abandoned e) {
                // the writer has failed and says why
              } catch (RuntimeException e) {
                failed[0] = e;
              } catch (Error e) {
                broken[0] = e;
              } finally {
                handover.end();
              }
            },
            "reader");
    thread.setDaemon(true);
    thread.start();
    try {
      for (StoredFact told = handover.take(); told != END; told = handover.take()) {
        told.to(writer);
      }
    } finally {
      handover.abandon();
    }
    if (broken[0] != null) {
      throw broken[0];
    }
    if (failed[0] != null) {
      throw failed[0];
    }
  }

  private StoredFact take() {
    try {
      return queue.take();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while adding a source", e);
    }
  }

  private void put(StoredFact told) {
    try {
      while (!queue.offer(told, 100, java.util.concurrent.TimeUnit.MILLISECONDS)) {
        if (abandoned) {
          throw new Abandoned();
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Abandoned();
    }
  }

  private void end() {
    try {
      put(END);
    } catch (Abandoned e) {
      queue.clear();
    }
  }

  private void abandon() {
    abandoned = true;
  }

  @Override
  public void report(TestReport report) {
    put(writer -> writer.report(report));
  }

  @Override
  public void keyNotGiven(String key) {
    put(writer -> writer.keyNotGiven(key));
  }

  @Override
  public void name(String written, String model, NameTaken how) {
    put(writer -> writer.name(written, model, how));
  }

  @Override
  public void lineage(LineageRow row, List<String> means) {
    put(writer -> writer.lineage(row, means));
  }

  @Override
  public void finding(Finding finding) {
    put(writer -> writer.finding(finding));
  }
}
