package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which tests of a large archive are taken in. Taking in a test of k models while n are held costs
 * about n²k steps; an archive whose tests cost less than the bound is taken in whole.
 */
final class Affordable {
  private Affordable() {}

  /** The newest tests that can be taken in with this many steps, in their order. */
  static List<TestBlock> newest(DescentForest descent, List<TestBlock> rounds, double work) {
    int[] held = new Needed(descent, rounds, new int[0]).held();
    double sum = 0;
    int from = rounds.size();
    while (from > 0) {
      sum += steps(held[from - 1], rounds.get(from - 1));
      if (sum > work) {
        break;
      }
      from--;
    }
    return rounds.subList(from, rounds.size());
  }

  private static double steps(int held, TestBlock round) {
    double size = held + DescentForest.GROUPS + 1;
    return size * size * round.models().length;
  }

  /**
   * All tests, or where they cost too much the newest of each model of a field (of its nearest
   * tested predecessor, where it has none), in turn for half of the steps, and the newest of all
   * for the rest; in their order.
   */
  static List<TestBlock> about(DescentForest descent, List<TestBlock> rounds, int[] field, double work) {
    if (newest(descent, rounds, work).size() == rounds.size()) {
      return rounds;
    }
    Set<Integer> chosen = new TreeSet<>();
    Set<Integer> models = new HashSet<>();
    List<List<Integer>> own = own(descent, rounds, field);
    double sum = 0;
    for (int turn = 0; sum < work / 2 && turn < rounds.size(); turn++) {
      for (List<Integer> of : own) {
        if (turn < of.size() && chosen.add(of.get(turn))) {
          TestBlock round = rounds.get(of.get(turn));
          Arrays.stream(round.models()).forEach(models::add);
          sum += steps(models.size(), round);
        }
      }
    }
    for (int r = rounds.size() - 1; r >= 0; r--) {
      if (chosen.contains(r)) {
        continue;
      }
      Arrays.stream(rounds.get(r).models()).forEach(models::add);
      sum += steps(models.size(), rounds.get(r));
      if (sum > work) {
        break;
      }
      chosen.add(r);
    }
    return chosen.stream().map(rounds::get).toList();
  }

  /** For each model of the field the tests that tell of it, the newest first. */
  private static List<List<Integer>> own(DescentForest descent, List<TestBlock> rounds, int[] field) {
    boolean[] tested = new boolean[descent.parent().length];
    rounds.forEach(round -> Arrays.stream(round.models()).forEach(m -> tested[m] = true));
    List<List<Integer>> own = new ArrayList<>();
    for (int model : field) {
      int from = tested[model] ? model : descent.ancestor(model, tested);
      List<Integer> of = new ArrayList<>();
      for (int r = rounds.size() - 1; r >= 0 && from >= 0; r--) {
        if (Arrays.stream(rounds.get(r).models()).anyMatch(m -> m == from)) {
          of.add(r);
        }
      }
      own.add(of);
    }
    return own;
  }
}
