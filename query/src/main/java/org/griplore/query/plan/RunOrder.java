package org.griplore.query.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The order in which sets of tyres are run: the reference set first and last and after at most
 * three candidates, the reference run that ends one cycle beginning the next (UN Regulation No.
 * 117, annex 5, 4.2.7.2).
 */
final class RunOrder {
  private static final int MOST_BETWEEN_REFERENCES = 3;

  private RunOrder() {}

  /** The sets in order, R the reference and T1, T2 ... the candidates; cycles as even as can be. */
  static List<String> of(int candidates) {
    int cycles = (candidates + MOST_BETWEEN_REFERENCES - 1) / MOST_BETWEEN_REFERENCES;
    List<String> order = new ArrayList<>(List.of("R"));
    int next = 1;
    for (int cycle = 0; cycle < cycles; cycle++) {
      int last = (int) ((long) candidates * (cycle + 1) / cycles);
      while (next <= last) {
        order.add("T" + next++);
      }
      order.add("R");
    }
    return order;
  }
}
