package org.griplore.query.retold;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.TestDate;

/**
 * Pairs of tests that could be one: no more than {@link #DAYS} days apart as far as their dates
 * say, in the same size as far as both state one, with {@link #FEWEST} or more models in common.
 *
 * <p>Each test looks, model by model, at those before it in the list of the model's tests by date
 * and stops where the days run out: the work is that of tests near in time which share models, not
 * of all pairs.
 */
final class TestPairs {
  static final int FEWEST = 4;
  static final int DAYS = 180;

  /** Takes pairs. */
  interface Taker {
    void take(int one, int other);
  }

  private final int[][] models;
  private final long[] firstDay;
  private final long[] lastDay;
  private final int[] size;

  /** Days that the vaguest date covers: a year, where one is stated as no more. */
  private long longest;

  TestPairs(Snapshot snapshot) {
    this.models = models(snapshot);
    int tests = models.length;
    this.firstDay = new long[tests];
    this.lastDay = new long[tests];
    this.size = new int[tests];
    Map<String, Integer> sizes = new HashMap<>();
    for (int t = 0; t < tests; t++) {
      TestDate date = snapshot.tests().get(t).details().date();
      firstDay[t] = date == null ? Long.MAX_VALUE : date.firstDay().toEpochDay();
      lastDay[t] = date == null ? Long.MAX_VALUE : lastDay(date);
      longest = Math.max(longest, lastDay[t] - firstDay[t]);
      String text = snapshot.tests().get(t).details().size();
      size[t] = text == null ? -1 : sizes.computeIfAbsent(key(text), key -> sizes.size());
    }
  }

  private static String key(String size) {
    return TyreSize.find(size).map(TyreSize::key).orElse(size);
  }

  private static long lastDay(TestDate date) {
    LocalDate first = date.firstDay();
    return switch (date.text().length()) {
      case 4 -> first.plusYears(1).toEpochDay() - 1;
      case 7 -> first.plusMonths(1).toEpochDay() - 1;
      default -> first.toEpochDay();
    };
  }

  /** The models of each test, each once, ascending. */
  private static int[][] models(Snapshot snapshot) {
    EntryColumns entries = snapshot.entries();
    int[] count = new int[snapshot.tests().size()];
    for (int e = 0; e < entries.count(); e++) {
      count[entries.test()[e]]++;
    }
    int[][] models = new int[count.length][];
    Arrays.setAll(models, t -> new int[count[t]]);
    for (int e = 0; e < entries.count(); e++) {
      int test = entries.test()[e];
      models[test][--count[test]] = entries.model()[e];
    }
    for (int t = 0; t < models.length; t++) {
      models[t] = Arrays.stream(models[t]).sorted().distinct().toArray();
    }
    return models;
  }

  /** Tells each pair once; tests without a date can be any day's. */
  void forEach(Taker taker) {
    int[] order =
        IntStream.range(0, models.length)
            .filter(t -> models[t].length >= FEWEST)
            .boxed()
            .sorted(Comparator.comparingLong(t -> firstDay[t]))
            .mapToInt(t -> t)
            .toArray();
    int most = Arrays.stream(models).flatMapToInt(Arrays::stream).max().orElse(-1) + 1;
    int[][] before = new int[most][8];
    int[] length = new int[most];
    int[] common = new int[models.length];
    int[] touched = new int[models.length];
    for (int test : order) {
      int reached = 0;
      for (int model : models[test]) {
        for (int i = length[model] - 1; i >= 0; i--) {
          int other = before[model][i];
          if (isPast(other, test)) {
            break;
          }
          if (common[other]++ == 0) {
            touched[reached++] = other;
          }
        }
        if (length[model] == before[model].length) {
          before[model] = Arrays.copyOf(before[model], 2 * length[model]);
        }
        before[model][length[model]++] = test;
      }
      for (int i = 0; i < reached; i++) {
        int other = touched[i];
        if (common[other] >= FEWEST && isNear(other, test) && isOneSize(other, test)) {
          taker.take(other, test);
        }
        common[other] = 0;
      }
    }
  }

  /** Whether all tests before this one in a list by date are too old as well. */
  private boolean isPast(int other, int test) {
    return firstDay[test] != Long.MAX_VALUE && firstDay[test] - firstDay[other] > DAYS + longest;
  }

  private boolean isNear(int other, int test) {
    return firstDay[test] == Long.MAX_VALUE || firstDay[test] - lastDay[other] <= DAYS;
  }

  private boolean isOneSize(int other, int test) {
    return size[other] < 0 || size[test] < 0 || size[other] == size[test];
  }
}
