package org.griplore.query.evidence;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.TyreState.Wear;

/**
 * Which results of a test and discipline may be set against each other: those that came about alike
 * (measured, declared or claimed; within the same speeds and conditions) on tyres in a like state.
 * Where a test has several series of measured results of new tyres, wet braking from two speeds,
 * say, the one with most results speaks for the test; of equal ones the first.
 */
final class Series {
  private final Snapshot snapshot;
  private final int wears = Wear.values().length;

  /** Results of a kind and state whose test and discipline have a fuller series of it. */
  private final BitSet aside = new BitSet();

  Series(Snapshot snapshot) {
    this.snapshot = snapshot;
    if (snapshot.circumstances().size() > 1) {
      findAside();
    }
  }

  /** How many series there can be. */
  int count() {
    return Math.max(1, snapshot.circumstances().size()) * wears;
  }

  /** The series of a result, from 0. */
  int of(int result) {
    ResultColumns results = snapshot.results();
    Wear wear = snapshot.entries().state()[results.entry()[result]].wear();
    return results.circumstance()[result] * wears + wear.ordinal();
  }

  /** What sort of evidence a result is. */
  ResultKind kind(int result) {
    return snapshot.circumstances().get(snapshot.results().circumstance()[result]).kind();
  }

  /** Whether another series of the result's kind and state speaks for its test. */
  boolean isAside(int result) {
    return aside.get(result);
  }

  /** Results of a test and discipline, of one kind, on tyres of one state. */
  private record Group(int test, int discipline, ResultKind kind, Wear wear) {}

  private void findAside() {
    ResultColumns results = snapshot.results();
    Map<Group, Map<Integer, Integer>> sizes = new HashMap<>();
    for (int result = 0; result < results.count(); result++) {
      sizes
          .computeIfAbsent(group(result), group -> new HashMap<>())
          .merge(results.circumstance()[result], 1, Integer::sum);
    }
    Map<Group, Integer> fullest = new HashMap<>();
    sizes.forEach(
        (group, counts) -> {
          if (counts.size() > 1) {
            int most = -1;
            for (Map.Entry<Integer, Integer> one : counts.entrySet()) {
              int than = most < 0 ? 0 : counts.get(most);
              if (one.getValue() > than || one.getValue() == than && one.getKey() < most) {
                most = one.getKey();
              }
            }
            fullest.put(group, most);
          }
        });
    for (int result = 0; result < results.count() && !fullest.isEmpty(); result++) {
      Integer most = fullest.get(group(result));
      aside.set(result, most != null && most != results.circumstance()[result]);
    }
  }

  private Group group(int result) {
    ResultColumns results = snapshot.results();
    int entry = results.entry()[result];
    return new Group(
        snapshot.entries().test()[entry],
        results.discipline()[result],
        kind(result),
        snapshot.entries().state()[entry].wear());
  }
}
