package org.griplore.query.statistics;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/**
 * The bias-reduced sandwich variance of one contrast. With Q from the weighted design, residuals of
 * a cluster g are multiplied by (I - Q_g Q_g')^-½, a pseudo-inverse where a cluster alone carries a
 * coefficient. All is done in the k columns of Q, so large clusters cost no more than small ones.
 */
final class Cr2 {
  /** Leverage so near 1 is a coefficient that the cluster alone carries. */
  private static final double ALONE = 1e-10;

  private Cr2() {}

  static Optional<ClusteredRegression.Estimate> estimate(
      double value,
      Orthogonal qr,
      double[] direction,
      double[] residuals,
      int[] cluster,
      int clusters) {
    int k = direction.length;
    double[][] adjusted = new double[clusters][];
    DMatrixRMaj[] gram = new DMatrixRMaj[clusters];
    for (int g = 0; g < clusters; g++) {
      gram[g] = new DMatrixRMaj(k, k);
    }
    for (int i = 0; i < residuals.length; i++) {
      DMatrixRMaj of = gram[cluster[i]];
      for (int a = 0; a < k; a++) {
        for (int b = 0; b < k; b++) {
          of.add(a, b, qr.q().get(i, a) * qr.q().get(i, b));
        }
      }
    }
    double[][] along = new double[clusters][];
    double[] length = new double[clusters];
    for (int g = 0; g < clusters; g++) {
      Optional<double[]> factor = adjust(gram[g], direction);
      if (factor.isEmpty()) {
        return Optional.empty();
      }
      adjusted[g] = factor.orElseThrow();
      along[g] = times(gram[g], adjusted[g]);
      for (int a = 0; a < k; a++) {
        length[g] += adjusted[g][a] * along[g][a];
      }
    }
    double[] sums = new double[clusters];
    for (int i = 0; i < residuals.length; i++) {
      sums[cluster[i]] += qr.leverage(i, adjusted[cluster[i]]) * residuals[i];
    }
    double variance = 0;
    for (double sum : sums) {
      variance += sum * sum;
    }
    return Optional.of(
        new ClusteredRegression.Estimate(value, Math.sqrt(variance), df(along, length)));
  }

  /**
   * The vector a with Q_g a = (I - Q_g Q_g')^-½ Q_g d: with eigenvectors v and values s of Q_g'Q_g,
   * the part of d along v is divided by √(1 - s). Empty when d has a part that this cluster alone
   * decides.
   */
  private static Optional<double[]> adjust(DMatrixRMaj gram, double[] direction) {
    int k = direction.length;
    var eigen = DecompositionFactory_DDRM.eig(k, true, true);
    if (!eigen.decompose(gram.copy())) {
      throw new IllegalStateException("no eigenvalues of a symmetric matrix");
    }
    double norm = 0;
    for (double d : direction) {
      norm += d * d;
    }
    double[] result = new double[k];
    for (int j = 0; j < k; j++) {
      double s = eigen.getEigenvalue(j).getReal();
      DMatrixRMaj v = eigen.getEigenVector(j);
      double part = 0;
      for (int a = 0; a < k; a++) {
        part += v.get(a) * direction[a];
      }
      if (1 - s < ALONE) {
        if (part * part > ALONE * norm) {
          return Optional.empty();
        }
        continue;
      }
      double factor = part / Math.sqrt(1 - Math.max(0, s));
      for (int a = 0; a < k; a++) {
        result[a] += factor * v.get(a);
      }
    }
    return Optional.of(result);
  }

  /**
   * Satterthwaite's (tr P)² / tr P² of the quadratic form's matrix under independent errors, P_gh =
   * [g = h] |a_g|² - (Q_g'a_g)'(Q_h'a_h).
   */
  private static double df(double[][] along, double[] length) {
    double trace = 0;
    double squares = 0;
    for (int g = 0; g < along.length; g++) {
      for (int h = 0; h <= g; h++) {
        double p = g == h ? length[g] : 0;
        for (int a = 0; a < along[g].length; a++) {
          p -= along[g][a] * along[h][a];
        }
        trace += g == h ? p : 0;
        squares += (g == h ? 1 : 2) * p * p;
      }
    }
    return squares > 0 ? trace * trace / squares : 1;
  }

  private static double[] times(DMatrixRMaj matrix, double[] vector) {
    double[] result = new double[vector.length];
    for (int a = 0; a < vector.length; a++) {
      for (int b = 0; b < vector.length; b++) {
        result[a] += matrix.get(a, b) * vector[b];
      }
    }
    return result;
  }
}
