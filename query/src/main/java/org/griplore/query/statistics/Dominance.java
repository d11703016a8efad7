package org.griplore.query.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Who was ever placed before whom. Models in different components never met, not even through
 * others, so nothing compares them. Models of one component at different levels met, but never did
 * the lower come before the higher, not even through others: how far they are apart cannot be
 * estimated (Ford 1957, American Mathematical Monthly 64:28).
 */
final class Dominance {
  private final int[] component;
  private final List<List<Integer>> levels = new ArrayList<>();
  private final int[] levelOf;
  private int components;

  Dominance(int models, List<RankedField> fields) {
    List<List<Integer>> above = new ArrayList<>();
    for (int i = 0; i < models; i++) {
      above.add(new ArrayList<>());
    }
    DisjointSets met = new DisjointSets(models);
    boolean[] ranked = new boolean[models];
    for (RankedField field : fields) {
      List<int[]> groups = field.groups();
      int better = -1;
      for (int[] group : groups) {
        for (int i = 0; i < group.length; i++) {
          ranked[group[i]] = true;
          met.join(group[0], group[i]);
          above.get(group[i]).add(group[0]);
          above.get(group[0]).add(group[i]);
        }
        if (better >= 0) {
          above.get(group[0]).add(better);
          met.join(better, group[0]);
        }
        better = group[0];
      }
    }
    component = new int[models];
    Arrays.fill(component, -1);
    int[] number = new int[models];
    Arrays.fill(number, -1);
    for (int i = 0; i < models; i++) {
      if (ranked[i]) {
        int at = met.of(i);
        if (number[at] < 0) {
          number[at] = components++;
        }
        component[i] = number[at];
      }
    }
    levelOf = new int[models];
    Arrays.fill(levelOf, -1);
    new Levels(above).run(ranked);
  }

  /** The component of a model, -1 for one never ranked. */
  int component(int model) {
    return component[model];
  }

  int components() {
    return components;
  }

  /** The levels of a component, the highest first; one level when all can be compared. */
  List<List<Integer>> levels(int ofPart) {
    return levels.stream().filter(level -> component[level.get(0)] == ofPart).toList();
  }

  /** Strongly connected models, found in one pass without recursion (Tarjan 1972). */
  private final class Levels {
    private final List<List<Integer>> above;
    private final int[] index;
    private final int[] low;
    private final int[] next;
    private final List<Integer> open = new ArrayList<>();
    private int counter;

    Levels(List<List<Integer>> above) {
      this.above = above;
      this.index = new int[above.size()];
      this.low = new int[above.size()];
      this.next = new int[above.size()];
      Arrays.fill(index, -1);
    }

    void run(boolean[] ranked) {
      for (int i = 0; i < ranked.length; i++) {
        if (ranked[i] && index[i] < 0) {
          visit(i);
        }
      }
    }

    private void visit(int start) {
      List<Integer> path = new ArrayList<>(List.of(start));
      enter(start);
      while (!path.isEmpty()) {
        int at = path.get(path.size() - 1);
        if (next[at] < above.get(at).size()) {
          int to = above.get(at).get(next[at]++);
          if (index[to] < 0) {
            enter(to);
            path.add(to);
          } else if (levelOf[to] < 0) {
            low[at] = Math.min(low[at], index[to]);
          }
        } else {
          path.remove(path.size() - 1);
          if (!path.isEmpty()) {
            int from = path.get(path.size() - 1);
            low[from] = Math.min(low[from], low[at]);
          }
          if (low[at] == index[at]) {
            close(at);
          }
        }
      }
    }

    private void enter(int model) {
      index[model] = counter;
      low[model] = counter++;
      open.add(model);
    }

    private void close(int model) {
      List<Integer> level = new ArrayList<>();
      int taken;
      do {
        taken = open.remove(open.size() - 1);
        levelOf[taken] = levels.size();
        level.add(taken);
      } while (taken != model);
      level.sort(null);
      levels.add(level);
    }
  }
}
