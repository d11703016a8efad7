package org.griplore.query.evidence;

/**
 * Which rows belong to each key, as two arrays: the rows of key k are {@code rows[starts[k]]} to
 * {@code rows[starts[k + 1] - 1]}, in their own order.
 */
public record Postings(int[] starts, int[] rows) {
  /** Sorts rows by key (a counting sort, so order within a key is kept). */
  static Postings of(int[] keys, int keyCount) {
    int[] starts = new int[keyCount + 1];
    for (int key : keys) {
      starts[key + 1]++;
    }
    return filled(starts, keys.length, row -> keys[row]);
  }

  /** The same for short keys. */
  static Postings of(short[] keys, int keyCount) {
    int[] starts = new int[keyCount + 1];
    for (short key : keys) {
      starts[key + 1]++;
    }
    return filled(starts, keys.length, row -> keys[row]);
  }

  private interface KeyOfRow {
    int key(int row);
  }

  private static Postings filled(int[] starts, int rowCount, KeyOfRow keys) {
    for (int k = 1; k < starts.length; k++) {
      starts[k] += starts[k - 1];
    }
    int[] next = starts.clone();
    int[] rows = new int[rowCount];
    for (int row = 0; row < rowCount; row++) {
      rows[next[keys.key(row)]++] = row;
    }
    return new Postings(starts, rows);
  }

  /** First index into {@code rows} of a key. */
  public int from(int key) {
    return starts[key];
  }

  /** Index after the last of a key. */
  public int to(int key) {
    return starts[key + 1];
  }

  /** How many rows a key has. */
  public int count(int key) {
    return starts[key + 1] - starts[key];
  }
}
