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
  static List<TestBlock> newest(DescentForest descent, List<TestBlock> blocks, double work) {
    int[] held = new Needed(descent, blocks, new int[0]).held();
    double sum = 0;
    int from = blocks.size();
    while (from > 0) {
      sum += steps(held[from - 1], blocks.get(from - 1));
      if (sum > work) {
        break;
      }
      from--;
    }
    return blocks.subList(from, blocks.size());
  }

  private static double steps(int held, TestBlock block) {
    double size = held + DescentForest.GROUPS + 1;
    return size * size * block.models().length;
  }

  /**
   * All tests, or where they cost too much the newest of each model of a field (of its nearest
   * tested predecessor, where it has none), in turn for half of the steps, and the newest of all
   * for the rest; in their order.
   */
  static List<TestBlock> about(
      DescentForest descent, List<TestBlock> blocks, int[] field, double work) {
    if (newest(descent, blocks, work).size() == blocks.size()) {
      return blocks;
    }
    Set<Integer> chosen = new TreeSet<>();
    Set<Integer> models = new HashSet<>();
    List<List<Integer>> own = own(descent, blocks, field);
    double sum = 0;
    for (int turn = 0; sum < work / 2 && turn < blocks.size(); turn++) {
      for (List<Integer> of : own) {
        if (turn < of.size() && chosen.add(of.get(turn))) {
          TestBlock block = blocks.get(of.get(turn));
          Arrays.stream(block.models()).forEach(models::add);
          sum += steps(models.size(), block);
        }
      }
    }
    for (int r = blocks.size() - 1; r >= 0; r--) {
      if (chosen.contains(r)) {
        continue;
      }
      Arrays.stream(blocks.get(r).models()).forEach(models::add);
      sum += steps(models.size(), blocks.get(r));
      if (sum > work) {
        break;
      }
      chosen.add(r);
    }
    return chosen.stream().map(blocks::get).toList();
  }

  /** For each model of the field the tests that tell of it, the newest first. */
  private static List<List<Integer>> own(
      DescentForest descent, List<TestBlock> blocks, int[] field) {
    boolean[] tested = new boolean[descent.parent().length];
    blocks.forEach(block -> Arrays.stream(block.models()).forEach(m -> tested[m] = true));
    List<List<Integer>> own = new ArrayList<>();
    for (int model : field) {
      int from = tested[model] ? model : descent.ancestor(model, tested);
      List<Integer> of = new ArrayList<>();
      for (int r = blocks.size() - 1; r >= 0 && from >= 0; r--) {
        if (Arrays.stream(blocks.get(r).models()).anyMatch(m -> m == from)) {
          of.add(r);
        }
      }
      own.add(of);
    }
    return own;
  }
}
