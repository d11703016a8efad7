package org.griplore.query.retold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.vocabulary.Details;

/**
 * Tests that repeat each other: the same car on the same ground in the same size, no more than 30
 * days from one to the next, with most of their models in common. What one of them says the next
 * one says again, so that they are one cluster and not independent days.
 */
public final class TestSeries {
  private static final int DAYS = 30;
  private static final double MOST = 0.5;

  private final int[] cluster;

  private TestSeries(int[] cluster) {
    this.cluster = cluster;
  }

  private record Setting(String vehicle, String venue, String size) {}

  /** Finds them; tests that do not state car, ground or day stand alone. */
  public static TestSeries in(Snapshot snapshot) {
    int tests = snapshot.tests().size();
    int[] cluster = new int[tests];
    Arrays.setAll(cluster, test -> test);
    Map<Setting, List<Integer>> settings = new HashMap<>();
    for (int t = 0; t < tests; t++) {
      Details its = snapshot.tests().get(t).details();
      if (its.vehicle() != null && its.venue() != null && its.date() != null) {
        settings
            .computeIfAbsent(
                new Setting(its.vehicle(), its.venue(), its.size()), s -> new ArrayList<>())
            .add(t);
      }
    }
    settings.values().removeIf(of -> of.size() < 2);
    if (!settings.isEmpty()) {
      BitSet[] models = models(snapshot);
      settings.values().forEach(of -> join(snapshot, of, models, cluster));
    }
    return new TestSeries(cluster);
  }

  private static void join(Snapshot snapshot, List<Integer> of, BitSet[] models, int[] cluster) {
    of.sort(Comparator.comparingLong(test -> day(snapshot, test)));
    for (int i = 1; i < of.size(); i++) {
      int test = of.get(i);
      int before = of.get(i - 1);
      BitSet common = (BitSet) models[test].clone();
      common.and(models[before]);
      int smaller = Math.min(models[test].cardinality(), models[before].cardinality());
      if (day(snapshot, test) - day(snapshot, before) <= DAYS
          && common.cardinality() > 1
          && common.cardinality() > MOST * smaller) {
        cluster[test] = cluster[before];
      }
    }
  }

  private static long day(Snapshot snapshot, int test) {
    return snapshot.tests().get(test).details().date().firstDay().toEpochDay();
  }

  private static BitSet[] models(Snapshot snapshot) {
    BitSet[] models = new BitSet[snapshot.tests().size()];
    Arrays.setAll(models, test -> new BitSet());
    for (int e = 0; e < snapshot.entries().count(); e++) {
      models[snapshot.entries().test()[e]].set(snapshot.entries().model()[e]);
    }
    return models;
  }

  /** The cluster of a test: the position of its first test. */
  public int of(int test) {
    return cluster[test];
  }
}
