package org.griplore.store.export;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import org.griplore.store.archive.views.ArchiveTable;

/**
 * Hands rows from the thread that reads them to one that writes them, a thousand at a time, so that
 * both work at once; what waits is bounded.
 */
final class RowQueue {
  private static final int ROWS_A_BATCH = 1000;
  private static final int BATCHES_WAITING = 4;
  private static final List<Object[]> END = List.of();

  private final BlockingQueue<List<Object[]>> waiting = new ArrayBlockingQueue<>(BATCHES_WAITING);
  private volatile RuntimeException failure;

  private RowQueue() {}

  /** Gives rows to a taker. */
  interface Reading {
    void into(ArchiveTable.RowTaker taker);
  }

  /**
   * Reads here and writes in another thread; what either throws is thrown here, and both have ended
   * then.
   */
  static void between(Reading reading, ArchiveTable.RowTaker writing) {
    RowQueue queue = new RowQueue();
    Thread writer = new Thread(() -> queue.write(writing), "export");
    writer.start();
    try {
      queue.read(reading);
    } finally {
      queue.end(writer);
    }
    if (queue.failure != null) {
      throw queue.failure;
    }
  }

  private void read(Reading reading) {
    List<List<Object[]>> batch = new ArrayList<>(List.of(new ArrayList<>(ROWS_A_BATCH)));
    reading.into(
        row -> {
          batch.get(0).add(row.clone());
          if (batch.get(0).size() == ROWS_A_BATCH) {
            put(batch.set(0, new ArrayList<>(ROWS_A_BATCH)));
          }
        });
    if (!batch.get(0).isEmpty()) {
      put(batch.get(0));
    }
  }

  private void put(List<Object[]> batch) {
    if (failure != null) {
      throw failure;
    }
    try {
      waiting.put(batch);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the export was interrupted", e);
    }
  }

  /** Takes everything to the end, even after a failure, so that the reader never waits for room. */
  private void write(ArchiveTable.RowTaker writing) {
    try {
      for (List<Object[]> batch = waiting.take(); batch != END; batch = waiting.take()) {
        if (failure == null) {
          write(batch, writing);
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void write(List<Object[]> batch, ArchiveTable.RowTaker writing) {
    try {
      batch.forEach(writing::take);
    } catch (RuntimeException e) {
      failure = e;
    }
  }

  private void end(Thread writer) {
    try {
      waiting.put(END);
      writer.join();
    } catch (InterruptedException e) {
      writer.interrupt();
      Thread.currentThread().interrupt();
    }
  }
}
