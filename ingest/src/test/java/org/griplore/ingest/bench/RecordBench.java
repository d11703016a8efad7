package org.griplore.ingest.bench;

import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.griplore.ingest.grid.source.DocumentReader;
import org.griplore.ingest.grid.text.DelimitedText;
import org.griplore.ingest.grid.text.RecordReader;
import org.griplore.store.archive.Original;

/**
 * Prints how many rows of 18 fields a second are read from a long table, decoding included. {@code
 * args}: rows (default 1,500,000).
 */
public final class RecordBench {
  private static final int BLOCK_ROWS = 1000;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private RecordBench() {}

  /** Repeats a block of rows, so that no disk is measured. */
  private static final class Repeated extends InputStream {
    private final byte[] block;
    private final int times;
    private long position;

    Repeated(byte[] block, int times) {
      this.block = block;
      this.times = times;
    }

    @Override
    public int read() {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) {
      long left = (long) block.length * times - position;
      int from = (int) (position % block.length);
      int count = (int) Math.min(Math.min(length, left), block.length - from);
      System.arraycopy(block, from, bytes, offset, count);
      position += count;
      return count == 0 && length > 0 ? -1 : count;
    }
  }

  /** Runs five times and prints each. */
  public static void main(String[] args) throws IOException {
    int rows = args.length > 0 ? Integer.parseInt(args[0]) : 1_500_000;
    StringBuilder block = new StringBuilder();
    for (int i = 0; i < BLOCK_ROWS; i++) {
      block.append(
          "t-%d,2021-06-%02d,Club,own,\"Summer test, %d\",205/55 R16 91V,summer,compact,1450,North oval,Anvora Kelt %d,wet-braking,%d.%d,m,0.3,6,%d,calm%n"
              .formatted(i, 1 + i % 28, i, i % 9, 28 + i % 5, i % 10, i % 12)
              .replace(System.lineSeparator(), "\n"));
    }
    byte[] bytes = block.toString().getBytes(StandardCharsets.UTF_8);
    Original original =
        Original.of("bench", "bench.csv", () -> new Repeated(bytes, rows / BLOCK_ROWS));
    DelimitedText text = DocumentReader.delimited(original).orElseThrow();
    for (int run = 1; run <= 5; run++) {
      long start = System.nanoTime();
      long startCpu = THREADS.getCurrentThreadCpuTime();
      long read = 0;
      long fields = 0;
      try (RecordReader records = text.open()) {
        while (records.next()) {
          read++;
          fields += records.count();
        }
      }
      double cpu = (THREADS.getCurrentThreadCpuTime() - startCpu) / 1e9;
      double seconds = (System.nanoTime() - start) / 1e9;
      System.out.printf(
          Locale.ROOT,
          "run %d: %d rows of %d fields in %.2f s (%.2f s of one core), %.0f rows/s (%.0f)%n",
          run,
          read,
          fields / read,
          seconds,
          cpu,
          read / seconds,
          read / cpu);
    }
  }
}
