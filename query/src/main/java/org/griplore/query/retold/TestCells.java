package org.griplore.query.retold;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.griplore.store.archive.EntryColumns;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Scale;

/** The figures of each test, discipline by discipline, the first of each model. */
final class TestCells {
  /** Pairs come by date, so that tests near in time are asked for again. */
  private static final int KEPT = 4096;

  private final Snapshot snapshot;
  private final boolean[] isRatio;
  private final int[] firstResult;
  private final int[] firstEntry;
  private final int[] entryOrder;
  private final int[] resultOrder;

  private final Map<Integer, TestFigures> kept =
      new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Integer, TestFigures> eldest) {
          return size() > KEPT;
        }
      };

  TestCells(Snapshot snapshot, DisciplineCatalogue catalogue) {
    this.snapshot = snapshot;
    this.isRatio = new boolean[snapshot.disciplines().size()];
    for (int d = 0; d < isRatio.length; d++) {
      isRatio[d] = catalogue.get(snapshot.disciplines().get(d)).scale() == Scale.RATIO;
    }
    EntryColumns entries = snapshot.entries();
    ResultColumns results = snapshot.results();
    this.firstResult = new int[entries.count() + 1];
    for (int r = 0; r < results.count(); r++) {
      firstResult[results.entry()[r] + 1]++;
    }
    for (int e = 0; e < entries.count(); e++) {
      firstResult[e + 1] += firstResult[e];
    }
    this.firstEntry = new int[snapshot.tests().size() + 1];
    for (int e = 0; e < entries.count(); e++) {
      firstEntry[entries.test()[e] + 1]++;
    }
    for (int t = 0; t < snapshot.tests().size(); t++) {
      firstEntry[t + 1] += firstEntry[t];
    }
    this.entryOrder = new int[entries.count()];
    int[] next = firstEntry.clone();
    for (int e = 0; e < entries.count(); e++) {
      entryOrder[next[entries.test()[e]]++] = e;
    }
    this.resultOrder = new int[results.count()];
    int[] place = firstResult.clone();
    for (int r = 0; r < results.count(); r++) {
      resultOrder[place[results.entry()[r]]++] = r;
    }
  }

  /** How many results a test has. */
  int count(int test) {
    int count = 0;
    for (int i = firstEntry[test]; i < firstEntry[test + 1]; i++) {
      count += firstResult[entryOrder[i] + 1] - firstResult[entryOrder[i]];
    }
    return count;
  }

  /** The figures of a test, by discipline and by model inside it, the first of each. */
  TestFigures of(int test) {
    return kept.computeIfAbsent(test, this::read);
  }

  private TestFigures read(int test) {
    TreeMap<Long, Integer> byKey = new TreeMap<>();
    ResultColumns results = snapshot.results();
    for (int i = firstEntry[test]; i < firstEntry[test + 1]; i++) {
      int entry = entryOrder[i];
      for (int k = firstResult[entry]; k < firstResult[entry + 1]; k++) {
        int r = resultOrder[k];
        byKey.putIfAbsent(
            TestFigures.key(results.discipline()[r], snapshot.entries().model()[entry]), r);
      }
    }
    return TestFigures.of(byKey, results, isRatio);
  }
}
