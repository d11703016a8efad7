package org.griplore.query.discipline;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * What was computed and may be asked for again, in so many bytes; the longest unused goes first.
 * Safe for many threads.
 */
final class SizedCache<K, V> {
  private final Map<K, V> kept = new LinkedHashMap<>(16, 0.75f, true);
  private final long room;
  private final ToLongFunction<V> bytes;
  private long taken;

  SizedCache(long room, ToLongFunction<V> bytes) {
    this.room = room;
    this.bytes = bytes;
  }

  /** What is kept under a key, or null. */
  synchronized V get(K key) {
    return kept.get(key);
  }

  /** Keeps a value, unless it alone is larger than the room. */
  synchronized void put(K key, V value) {
    if (bytes.applyAsLong(value) > room) {
      return;
    }
    V before = kept.put(key, value);
    taken += bytes.applyAsLong(value) - (before == null ? 0 : bytes.applyAsLong(before));
    Iterator<V> oldest = kept.values().iterator();
    while (taken > room) {
      taken -= bytes.applyAsLong(oldest.next());
      oldest.remove();
    }
  }

  synchronized void clear() {
    kept.clear();
    taken = 0;
  }
}
