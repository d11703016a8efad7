package org.griplore.query.solver;

import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * The shape of a symmetric matrix stored in square blocks: for each block column the first block
 * row that holds anything. Factoring fills nothing outside this shape, so that it is found once and
 * used in every step of an estimation.
 */
public final class BlockEnvelope {
  private static final int SIDE = 64;

  /** Below this many blocks a second core costs more than it brings. */
  private static final int PARALLEL_FROM = 6;

  /** Order of the matrix, without padding. */
  public final int size;

  /** Side of a block. */
  public final int side;

  /** Number of blocks along the diagonal. */
  public final int blocks;

  /** First block row of each block column. */
  public final int[] first;

  /** Block columns to the right of each block row that reach up to it, ascending. */
  public final int[][] reach;

  public BlockEnvelope(int[] firstPosition) {
    size = firstPosition.length;
    side = Math.min(SIDE, Math.max(4, (size + 3) / 4 * 4));
    blocks = (size + side - 1) / side;
    first = new int[blocks];
    for (int j = 0; j < blocks; j++) {
      int low = j * side;
      for (int c = j * side; c < Math.min(size, (j + 1) * side); c++) {
        low = Math.min(low, firstPosition[c]);
      }
      first[j] = low / side;
    }
    reach = new int[blocks][];
    for (int i = 0; i < blocks; i++) {
      int row = i;
      reach[i] = IntStream.range(i + 1, blocks).filter(j -> first[j] <= row).toArray();
    }
  }

  public int index(int blockRow, int blockColumn) {
    return blockRow * blocks + blockColumn;
  }

  public boolean holds(int blockRow, int blockColumn) {
    int low = Math.min(blockRow, blockColumn);
    return first[Math.max(blockRow, blockColumn)] <= low;
  }

  /** Upper blocks of zeros in this shape; blocks outside it are null. */
  public double[][] upperZeros() {
    double[][] blocksOf = new double[blocks * blocks][];
    for (int j = 0; j < blocks; j++) {
      for (int i = first[j]; i <= j; i++) {
        blocksOf[index(i, j)] = new double[side * side];
      }
    }
    return blocksOf;
  }

  /** Runs independent tasks 0 to count - 1, on all cores when the matrix is large. */
  public void each(int count, IntConsumer task) {
    if (blocks < PARALLEL_FROM) {
      for (int i = 0; i < count; i++) {
        task.accept(i);
      }
    } else {
      IntStream.range(0, count).parallel().forEach(task);
    }
  }
}
