package org.griplore.query.outlook;

import java.util.Arrays;
import java.util.List;

/**
 * Until which test each model is needed in a {@link LevelPosterior}: to its last test, or to the
 * first of a model that descends from it. Forgetting it then changes nothing that is told
 * afterwards.
 */
final class Needed {
  private final int[] last;
  private final int[] first;
  private final int[][] endingAt;

  /**
   * @param blocks in the order they are taken in
   * @param kept models that are asked for after the last of them
   */
  Needed(DescentForest descent, List<TestBlock> blocks, int[] kept) {
    int models = descent.parent().length;
    last = new int[models];
    first = new int[models];
    Arrays.fill(last, -1);
    Arrays.fill(first, Integer.MAX_VALUE);
    for (int r = 0; r < blocks.size(); r++) {
      for (int model : blocks.get(r).models()) {
        seen(descent, model, r);
      }
    }
    for (int model : kept) {
      seen(descent, model, blocks.size());
    }
    int[][] ending = new int[blocks.size()][0];
    for (int model = 0; model < models; model++) {
      if (last[model] >= 0 && last[model] < blocks.size()) {
        int[] so = ending[last[model]];
        ending[last[model]] = Arrays.copyOf(so, so.length + 1);
        ending[last[model]][so.length] = model;
      }
    }
    endingAt = ending;
  }

  private void seen(DescentForest descent, int model, int block) {
    last[model] = Math.max(last[model], block);
    for (int at = model; at >= 0; at = descent.parent()[at]) {
      last[at] = Math.max(last[at], block);
      if (first[at] <= block) {
        return;
      }
      first[at] = block;
    }
  }

  /** Models that no test after this one needs. */
  int[] endingAt(int block) {
    return endingAt[block];
  }

  /** How many models are in the state when each block is taken in. */
  int[] held() {
    int[] change = new int[endingAt.length + 2];
    for (int model = 0; model < last.length; model++) {
      if (last[model] >= 0) {
        change[Math.min(first[model], endingAt.length)]++;
        change[Math.min(last[model], endingAt.length) + 1]--;
      }
    }
    int[] held = new int[endingAt.length];
    int now = 0;
    for (int r = 0; r < held.length; r++) {
      now += change[r];
      held[r] = now;
    }
    return held;
  }
}
