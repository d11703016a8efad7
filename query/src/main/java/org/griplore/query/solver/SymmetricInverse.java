package org.griplore.query.solver;

import java.util.stream.IntStream;

/**
 * The inverse of a factored matrix, by blocks from the last row upwards (Takahashi, Fagan and Chin
 * 1973; Erisman and Tinney 1975): row i needs only rows below it, and inside an envelope only
 * entries inside the same envelope.
 */
public final class SymmetricInverse {
  private final BlockEnvelope shape;
  private final double[][] z;

  private SymmetricInverse(BlockEnvelope shape, double[][] z) {
    this.shape = shape;
    this.z = z;
  }

  public static SymmetricInverse of(BlockEnvelope shape, double[][] u, boolean whole) {
    int b = shape.side;
    double[][] z = new double[shape.blocks * shape.blocks][];
    for (int i = shape.blocks - 1; i >= 0; i--) {
      int row = i;
      double[] pivot = u[shape.index(i, i)];
      int[] right = shape.reach[i];
      int[] wanted = whole ? IntStream.range(i + 1, shape.blocks).toArray() : right;
      double[][] t = new double[right.length][];
      shape.each(
          right.length,
          k -> {
            t[k] = u[shape.index(row, right[k])].clone();
            BlockKernel.solve(pivot, t[k], b);
          });
      shape.each(
          wanted.length,
          w -> {
            double[] block = new double[b * b];
            for (int k = 0; k < right.length; k++) {
              BlockKernel.subtractProduct(block, t[k], z[shape.index(right[k], wanted[w])], b);
            }
            z[shape.index(row, wanted[w])] = block;
            z[shape.index(wanted[w], row)] = BlockKernel.transpose(block, b);
          });
      double[] own = new double[b * b];
      for (int r = 0; r < b; r++) {
        own[r * b + r] = 1;
      }
      BlockKernel.solveTransposed(pivot, own, b);
      BlockKernel.solve(pivot, own, b);
      for (int k = 0; k < right.length; k++) {
        BlockKernel.subtractProduct(own, t[k], z[shape.index(right[k], i)], b);
      }
      z[shape.index(i, i)] = own;
    }
    return new SymmetricInverse(shape, z);
  }

  public boolean holds(int row, int column) {
    return z[shape.index(row / shape.side, column / shape.side)] != null;
  }

  /** Entry of the inverse; it must be held. */
  public double get(int row, int column) {
    int b = shape.side;
    return z[shape.index(row / b, column / b)][row % b * b + column % b];
  }
}
