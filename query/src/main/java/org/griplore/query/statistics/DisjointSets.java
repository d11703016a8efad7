package org.griplore.query.statistics;

import java.util.Arrays;

/**
 * Numbers from 0 joined into sets, two at a time (Tarjan 1975, J ACM 22:215, with paths halved). A
 * set is known by its smallest number, whatever the order of joining.
 */
public final class DisjointSets {
  private final int[] root;

  /** Each number alone. */
  public DisjointSets(int size) {
    root = new int[size];
    Arrays.setAll(root, i -> i);
  }

  /** Joins the sets of two numbers. */
  public void join(int a, int b) {
    int first = of(a);
    int second = of(b);
    root[Math.max(first, second)] = Math.min(first, second);
  }

  /** The smallest number of the set that holds this one. */
  public int of(int number) {
    int at = number;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }
}
