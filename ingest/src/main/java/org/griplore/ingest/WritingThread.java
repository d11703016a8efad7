package org.griplore.ingest;

import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import org.griplore.ingest.forms.Receiver;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LineageRow;
import org.griplore.store.vocabulary.TestReport;

/**
 * Hands what is told to another receiver on a thread of its own, in order, so that reading and
 * writing a long source overlap. What waits in between is bounded. The receiver behind is used by
 * this thread alone until {@link #finish} or {@link #close} has returned.
 */
final class WritingThread implements Receiver, AutoCloseable {
  private static final int PIECES_WAITING = 64;

  private final BlockingQueue<Runnable> waiting = new ArrayBlockingQueue<>(PIECES_WAITING);
  private final Receiver behind;
  private final Thread thread;
  private volatile boolean ended;
  private volatile RuntimeException failure;
  private volatile Error error;

  /** Starts the thread. */
  WritingThread(Receiver behind) {
    this.behind = behind;
    this.thread = new Thread(this::run, "archive-writing");
    this.thread.setDaemon(true);
    this.thread.start();
  }

  private void run() {
    try {
      while (!ended) {
        waiting.take().run();
      }
    } catch (InterruptedException e) {
      ended = true;
    } catch (RuntimeException e) {
      failure = e;
      ended = true;
      waiting.clear();
    } catch (Error e) {
      error = e;
      ended = true;
      waiting.clear();
    }
  }

  @Override
  public void report(TestReport report) {
    put(() -> behind.report(report));
  }

  @Override
  public void lineage(LineageRow row, List<String> means) {
    put(() -> behind.lineage(row, means));
  }

  @Override
  public void finding(Finding finding) {
    put(() -> behind.finding(finding));
  }

  private void put(Runnable piece) {
    try {
      // A writer that has failed takes nothing more: look again now and then instead of waiting.
      while (!waiting.offer(piece, 100, java.util.concurrent.TimeUnit.MILLISECONDS)) {
        refuseAfterFailure();
      }
      refuseAfterFailure();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while reading a source", e);
    }
  }

  private void refuseAfterFailure() {
    if (failure != null) {
      throw failure;
    }
    if (error != null) {
      throw error;
    }
  }

  /** Waits until all is written; throws what the receiver behind threw. */
  void finish() {
    put(() -> ended = true);
    join();
    refuseAfterFailure();
  }

  private void join() {
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while writing a source", e);
    }
  }

  /** Ends the thread; what still waits is not written. */
  @Override
  public void close() {
    if (thread.isAlive()) {
      thread.interrupt();
      join();
    }
  }
}
