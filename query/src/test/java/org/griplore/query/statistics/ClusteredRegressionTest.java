package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.griplore.query.statistics.Closeness.assertRelative;

import java.util.Random;
import org.griplore.query.statistics.ClusteredRegression.Errors;
import org.griplore.query.statistics.ClusteredRegression.Estimate;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Closed forms in which the sandwich is known, and the definition written out in whole matrices.
 */
class ClusteredRegressionTest {
  /**
   * A moderator that splits clusters of equal size: the slope is the difference of two means of
   * cluster means. CR2 is Welch's standard error on the cluster means (Bell and McCaffrey 2002),
   * its degrees of freedom Satterthwaite's for equal variances.
   */
  @Test
  void clustersOfEqualSizeInTwoGroups() {
    double[] means = {1.0, 2.0, 4.0, 6.0, 9.0, 5.5, 7.0};
    int[] side = {0, 0, 0, 1, 1, 1, 1};
    double[] y = new double[21];
    double[][] x = new double[21][1];
    int[] cluster = new int[21];
    for (int i = 0; i < 21; i++) {
      cluster[i] = 10 * (i / 3);
      x[i][0] = side[i / 3];
      y[i] = means[i / 3] + (i % 3 - 1) * 0.7;
    }
    ClusteredRegression fit = ClusteredRegression.of(y, x, null, cluster).orElseThrow();
    double[] low = {1, 2, 4};
    double[] high = {6, 9, 5.5, 7};
    MeanDifference welch = MeanDifference.welch(high, low);
    Estimate reduced = fit.slope(0, Errors.REDUCED_BIAS).orElseThrow();
    assertRelative("slope", reduced.value(), welch.difference(), 1e-12);
    assertRelative("CR2", reduced.se(), welch.se(), 1e-12);
    double df = MeanDifference.satterthwaite(1.0 / 3, 2, 1.0 / 4, 3);
    assertRelative("df", reduced.df(), df, 1e-10);
    Estimate clustered = fit.slope(0, Errors.CLUSTERED).orElseThrow();
    double squares = Summary.of(low).sumOfSquares() / 9 + Summary.of(high).sumOfSquares() / 16;
    assertRelative("CR1", clustered.se(), Math.sqrt(7.0 / 6 * 20.0 / 19 * squares), 1e-12);
    assertThat(clustered.df()).isEqualTo(6);
    assertThat(fit.clusters()).isEqualTo(7);
  }

  /** Each response its own cluster: CR2 of a two-group slope is Welch's standard error. */
  @Test
  void singleResponsesAreWelch() {
    ReferenceCase student = ReferenceCase.carried("student-1908");
    double[] y = student.column("extra");
    double[] group = student.column("group");
    double[][] x = new double[y.length][];
    for (int i = 0; i < y.length; i++) {
      x[i] = new double[] {group[i]};
    }
    ClusteredRegression fit = ClusteredRegression.of(y, x, null, null).orElseThrow();
    Estimate slope = fit.slope(0, Errors.REDUCED_BIAS).orElseThrow();
    assertRelative("se", slope.se(), student.value("stderr"), 1e-12);
    assertRelative("df", slope.df(), 18, 1e-10);
    assertRelative("t", slope.value() / slope.se(), -student.value("t"), 1e-12);
  }

  /** Unequal clusters and weights, against (I - H)^-½ of each cluster formed as a whole matrix. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {81, 82, 83})
  void unequalClustersAgreeWithTheDefinition(long seed) {
    Random random = new Random(seed);
    int n = 24;
    int[] cluster = new int[n];
    double[] y = new double[n];
    double[] w = new double[n];
    double[][] x = new double[n][2];
    for (int i = 0; i < n; i++) {
      cluster[i] = i < 9 ? 0 : i < 14 ? 1 : i < 16 ? 2 : 3 + i % 4;
      x[i][0] = 2000 + 20 * random.nextDouble();
      x[i][1] = random.nextGaussian() + cluster[i];
      w[i] = 0.5 + random.nextDouble();
      y[i] = 3 + 0.1 * x[i][0] + random.nextGaussian();
    }
    ClusteredRegression fit = ClusteredRegression.of(y, x, w, cluster).orElseThrow();
    RealMatrix design = MatrixUtils.createRealMatrix(n, 3);
    double[] response = new double[n];
    for (int i = 0; i < n; i++) {
      double root = Math.sqrt(w[i]);
      design.setRow(i, new double[] {root, root * (x[i][0] - 2010), root * x[i][1]});
      response[i] = root * y[i];
    }
    RealMatrix bread = MatrixUtils.inverse(design.transposeMultiply(design));
    RealMatrix solving = bread.multiply(design.transpose());
    double[] beta = solving.operate(response);
    RealMatrix maker = MatrixUtils.createRealIdentityMatrix(n).subtract(design.multiply(solving));
    RealVector residual = MatrixUtils.createRealVector(maker.operate(response));
    for (int column = 1; column < 3; column++) {
      double variance = 0;
      RealMatrix vectors = MatrixUtils.createRealMatrix(n, 7);
      for (int g = 0; g < 7; g++) {
        RealMatrix chosen = MatrixUtils.createRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
          chosen.setEntry(i, i, cluster[i] == g ? 1 : 0);
        }
        RealVector score = chosen.operate(solving.getRowVector(column));
        RealVector adjusted = inverseRoot(chosen.multiply(maker).multiply(chosen)).operate(score);
        vectors.setColumnVector(g, maker.operate(adjusted));
        variance += Math.pow(adjusted.dotProduct(residual), 2);
      }
      RealMatrix form = vectors.transposeMultiply(vectors);
      double df = Math.pow(form.getTrace(), 2) / form.multiply(form).getTrace();
      Estimate slope = fit.slope(column - 1, Errors.REDUCED_BIAS).orElseThrow();
      assertRelative("slope " + column, slope.value(), beta[column], 1e-9);
      assertRelative("CR2 " + column, slope.se(), Math.sqrt(variance), 1e-8);
      assertRelative("df " + column, slope.df(), df, 1e-8);
    }
  }

  private static RealMatrix inverseRoot(RealMatrix symmetric) {
    EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(symmetric);
    int n = symmetric.getRowDimension();
    RealMatrix root = MatrixUtils.createRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      double value = eigen.getEigenvalue(i);
      if (value > 1e-9) {
        RealVector v = eigen.getEigenvector(i);
        root = root.add(v.outerProduct(v).scalarMultiply(1 / Math.sqrt(value)));
      }
    }
    return root;
  }

  /** Twelve tests with a shared error each, the moderator a property of the test. */
  @Test
  void intervalsCoverWithFewUnevenClusters() {
    Random random = new Random(91);
    int covered = 0;
    int naive = 0;
    int archives = 1000;
    for (int archive = 0; archive < archives; archive++) {
      double[] y = new double[60];
      double[][] x = new double[60][1];
      int[] cluster = new int[60];
      double error = 0;
      double moderator = 0;
      for (int i = 0; i < 60; i++) {
        cluster[i] = i < 20 ? 0 : (i - 20) / 4 + 1;
        if (i == 0 || cluster[i] != cluster[i - 1]) {
          error = random.nextGaussian();
          moderator = 15 + random.nextInt(5);
        }
        x[i][0] = moderator;
        y[i] = 0.5 * moderator + error + random.nextGaussian();
      }
      ClusteredRegression fit = ClusteredRegression.of(y, x, null, cluster).orElseThrow();
      Interval careful = fit.slope(0, Errors.REDUCED_BIAS).orElseThrow().interval(0.95);
      Interval classical = fit.slope(0, Errors.CLASSICAL).orElseThrow().interval(0.95);
      covered += careful.contains(0.5) ? 1 : 0;
      naive += classical.contains(0.5) ? 1 : 0;
    }
    assertThat(covered).isBetween(920, 985);
    assertThat(naive).isLessThan(850);
  }

  @ParameterizedTest
  @EnumSource(Errors.class)
  void aConstantResponseHasASlopeOfNought(Errors errors) {
    double[] y = {5.1, 5.1, 5.1, 5.1, 5.1};
    double[][] x = {{1}, {2}, {3}, {4}, {6}};
    ClusteredRegression fit = ClusteredRegression.of(y, x, null, null).orElseThrow();
    Estimate slope = fit.slope(0, errors).orElseThrow();
    assertThat(slope.value()).isCloseTo(0, within(1e-14));
    assertThat(slope.se()).isZero();
    assertThat(slope.p()).isEmpty();
    assertThat(fit.explained()).isEmpty();
    assertThat(slope.df()).isPositive().isFinite();
  }

  @Test
  void whatTheDataCannotTellIsEmpty() {
    double[] y = {1, 2, 3, 4, 5};
    double[][] constant = {{205}, {205}, {205}, {205}, {205}};
    double[][] twice = {{1, 2}, {2, 4}, {3, 6}, {5, 10}, {7, 14}};
    double[][] rising = {{1}, {2}, {4}, {5}, {7}};
    assertThat(ClusteredRegression.of(y, constant, null, null)).isEmpty();
    assertThat(ClusteredRegression.of(y, twice, null, null)).isEmpty();
    assertThat(ClusteredRegression.of(y, rising, null, new int[] {3, 3, 3, 3, 3})).isEmpty();
    assertThat(ClusteredRegression.of(new double[] {1, 2}, new double[][] {{1}, {2}}, null, null))
        .isEmpty();
    // One test alone is at another rim: nothing repeats the slope.
    double[][] alone = {{16}, {16}, {16}, {18}, {18}};
    ClusteredRegression fit =
        ClusteredRegression.of(y, alone, null, new int[] {0, 0, 1, 2, 2}).orElseThrow();
    assertThat(fit.slope(0, Errors.REDUCED_BIAS)).isEmpty();
    assertThat(fit.slope(0, Errors.CLUSTERED)).isEmpty();
    assertThat(fit.slope(0, Errors.CLASSICAL)).isPresent();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ClusteredRegression.of(y, rising, new double[] {1, 1, 0, 1, 1}, null));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ClusteredRegression.of(y, new double[][] {{1}}, null, null));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ClusteredRegression.of(new double[0], new double[0][], null, null));
  }
}
