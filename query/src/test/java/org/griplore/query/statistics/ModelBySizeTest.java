package org.griplore.query.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.griplore.query.simulation.DrawnArchive;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModelBySizeTest {
  /** An archive of a stated truth: heterogeneity of variance one, a share of it by size. */
  private record Drawn(
      int[] test,
      int[] model,
      int[] size,
      double[] y,
      double[] known,
      double[] effect,
      double[][] ofSize) {
    static Drawn of(int models, int tests, int sizes, int field, double share, Random random) {
      double[] effect = new double[models];
      double[][] ofSize = new double[models][sizes];
      for (int m = 0; m < models; m++) {
        effect[m] = 2 * random.nextGaussian();
        for (int s = 0; s < sizes; s++) {
          ofSize[m][s] = Math.sqrt(share) * random.nextGaussian();
        }
      }
      List<int[]> arms = new ArrayList<>();
      List<Double> y = new ArrayList<>();
      for (int t = 0; t < tests; t++) {
        double level = 3 * random.nextGaussian();
        int s = random.nextInt(sizes);
        for (int m : DrawnArchive.some(field, models, random)) {
          arms.add(new int[] {t, m, s});
          y.add(level + effect[m] + ofSize[m][s] + Math.sqrt(1 - share) * random.nextGaussian());
        }
      }
      int n = arms.size();
      int[][] columns = new int[3][n];
      for (int i = 0; i < n; i++) {
        for (int c = 0; c < 3; c++) {
          columns[c][i] = arms.get(i)[c];
        }
      }
      return new Drawn(
          columns[0],
          columns[1],
          columns[2],
          y.stream().mapToDouble(v -> v).toArray(),
          new double[n],
          effect,
          ofSize);
    }

    Optional<ModelBySize> fit() {
      return ModelBySize.of(test, model, size, y, known);
    }
  }

  /**
   * The intervals of a difference over all sizes and in one size hold the truth as often as they
   * say, whether none, a quarter, a half or three quarters of the heterogeneity stays with a model
   * in a size.
   */
  @Tag("simulation")
  @ParameterizedTest(name = "{0} models, {1} tests, {2} sizes, share {3}")
  @CsvSource({
    "20, 40, 5, 0",
    "20, 40, 5, 0.1",
    "20, 40, 5, 0.25",
    "20, 40, 5, 0.5",
    "20, 40, 5, 0.75",
    "12, 16, 3, 0.5"
  })
  void intervalsHold(int models, int tests, int sizes, double share) {
    Random random = new Random(75);
    int archives = 60;
    double[] held = new double[3];
    double count = 0;
    double told = 0;
    double sum = 0;
    for (int archive = 0; archive < archives; archive++) {
      Drawn drawn = Drawn.of(models, tests, sizes, 6, share, random);
      ModelBySize fit = drawn.fit().orElseThrow();
      told += fit.p() < 0.05 ? 1.0 / archives : 0;
      sum += fit.share() / archives;
      for (int m = 1; m < models; m++) {
        Optional<ModelBySize.Contrast> all = fit.overAllSizes(m, m - 1);
        if (all.isEmpty()) {
          continue;
        }
        int size = m % sizes;
        double truth = drawn.effect[m] - drawn.effect[m - 1];
        double inSize = truth + drawn.ofSize[m][size] - drawn.ofSize[m - 1][size];
        held[0] += all.get().interval(0.95).contains(truth) ? 1 : 0;
        held[1] += fit.inSize(m, m - 1, size).get().interval(0.95).contains(inSize) ? 1 : 0;
        count++;
      }
    }
    assertThat(held[0] / count).as("over all sizes").isBetween(0.925, 0.98);
    assertThat(held[1] / count).as("in the size").isBetween(0.925, 0.98);
  }

  /** The deviance, estimates and errors by whole matrices, for some variances. */
  @Test
  void theBlockwiseInverseIsThatOfWholeMatrices() {
    Drawn drawn = Drawn.of(6, 8, 2, 4, 0.5, new Random(3));
    double[] known = new double[drawn.y.length];
    java.util.Arrays.setAll(known, i -> 0.1 + 0.02 * i);
    ModelBySizeDesign design =
        new ModelBySizeDesign(drawn.test, drawn.model, drawn.size, drawn.y, known);
    ModelBySizePoint point = new ModelBySizePoint(design, 0.4, 0.7);
    int n = drawn.y.length;
    RealMatrix x = new Array2DRowRealMatrix(n, design.columns());
    RealMatrix z = new Array2DRowRealMatrix(n, design.groups());
    RealMatrix diagonal = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      x.setEntry(i, design.testColumn(i), 1);
      if (design.modelColumn(i) >= 0) {
        x.setEntry(i, design.modelColumn(i), 1);
      }
      z.setEntry(i, design.group()[i], 1);
      diagonal.setEntry(i, i, 0.7 + known[i]);
    }
    RealMatrix v = diagonal.add(z.multiply(z.transpose()).scalarMultiply(0.4));
    RealMatrix vi = MatrixUtils.inverse(v);
    RealMatrix information = x.transpose().multiply(vi).multiply(x);
    RealMatrix covariance = MatrixUtils.inverse(information);
    RealMatrix toBeta = covariance.multiply(x.transpose()).multiply(vi);
    RealMatrix p = vi.subtract(vi.multiply(x).multiply(toBeta));
    RealVector y = new ArrayRealVector(drawn.y);
    RealVector py = p.operate(y);
    double deviance =
        Math.log(new LUDecomposition(v).getDeterminant())
            + Math.log(new LUDecomposition(information).getDeterminant())
            + y.dotProduct(py);
    assertThat(point.deviance()).isCloseTo(deviance, within(1e-8));
    assertThat(point.traces()[0])
        .isCloseTo(p.multiply(z).multiply(z.transpose()).getTrace(), within(1e-8));
    assertThat(point.traces()[1]).isCloseTo(p.getTrace(), within(1e-8));
    double[] fixed = design.difference(0, 3);
    double[] ofGroups = new double[design.groups()];
    ofGroups[0] = 1;
    ofGroups[2] = -1;
    RealVector k = new ArrayRealVector(fixed);
    RealVector l = new ArrayRealVector(ofGroups);
    RealVector u = z.transpose().operate(py).mapMultiply(0.4);
    assertThat(point.estimate(fixed, ofGroups))
        .isCloseTo(k.dotProduct(toBeta.operate(y)) + l.dotProduct(u), within(1e-8));
    // Henderson's equations: the inverse holds the prediction error variances
    int columns = design.columns();
    RealMatrix di = MatrixUtils.inverse(diagonal);
    RealMatrix both = new Array2DRowRealMatrix(n, columns + design.groups());
    both.setSubMatrix(x.getData(), 0, 0);
    both.setSubMatrix(z.getData(), 0, columns);
    RealMatrix equations = both.transpose().multiply(di).multiply(both);
    for (int g = 0; g < design.groups(); g++) {
      equations.addToEntry(columns + g, columns + g, 1 / 0.4);
    }
    RealVector kl = k.append(l);
    assertThat(point.variance(fixed, ofGroups))
        .isCloseTo(kl.dotProduct(MatrixUtils.inverse(equations).operate(kl)), within(1e-8));
  }

  /** Balanced: three models in two sizes, two tests of each; mean squares by hand. */
  @Test
  void inABalancedArchiveItIsTheAnalysisOfVariance() {
    Random random = new Random(11);
    int[] test = new int[24];
    int[] model = new int[24];
    int[] size = new int[24];
    double[] y = new double[24];
    double[][] own = new double[3][4];
    for (int m = 0; m < 3; m++) {
      for (int s = 0; s < 4; s++) {
        own[m][s] = 2 * random.nextGaussian();
      }
    }
    for (int i = 0; i < 24; i++) {
      test[i] = i / 3;
      model[i] = i % 3;
      size[i] = i / 6;
      y[i] = own[model[i]][size[i]] + 0.5 * random.nextGaussian();
    }
    ModelBySize fit = ModelBySize.of(test, model, size, y, new double[24]).orElseThrow();
    double[][] cell = new double[3][4];
    double[] ofTest = new double[8];
    double[] ofSize = new double[4];
    double[] ofModel = new double[3];
    double mean = 0;
    for (int i = 0; i < 24; i++) {
      cell[model[i]][size[i]] += y[i] / 2;
      ofTest[test[i]] += y[i] / 3;
      ofSize[size[i]] += y[i] / 6;
      ofModel[model[i]] += y[i] / 8;
      mean += y[i] / 24;
    }
    double within = 0;
    double between = 0;
    for (int i = 0; i < 24; i++) {
      double inTest = y[i] - ofTest[test[i]] - cell[model[i]][size[i]] + ofSize[size[i]];
      within += inTest * inTest / 8; // (models - 1) x tests beyond one in each size
      double inSize = cell[model[i]][size[i]] - ofModel[model[i]] - ofSize[size[i]] + mean;
      between += inSize * inSize / 6; // (models - 1)(sizes - 1)
    }
    assertThat(fit.rest()).isCloseTo(within, within(1e-5));
    assertThat(fit.ofSize()).isCloseTo((between - within) / 2, within(1e-5));
    ModelBySize.Contrast all = fit.overAllSizes(0, 1).orElseThrow();
    assertThat(all.value()).isCloseTo(ofModel[0] - ofModel[1], within(1e-8));
    assertThat(all.se()).isCloseTo(Math.sqrt(2 * between / 8), within(1e-4));
    assertThat(all.df()).as("(models - 1)(sizes - 1)").isCloseTo(6, within(0.1));
  }

  @Test
  void oneTestASizeCannotTell() {
    int[] test = {0, 0, 0, 1, 1, 1, 2, 2, 2};
    int[] model = {0, 1, 2, 0, 1, 2, 0, 1, 2};
    double[] y = {1, 2, 3, 2, 2, 5, 1, 3, 3};
    assertThat(ModelBySize.of(test, model, test, y, new double[9])).isEmpty();
    assertThat(ModelBySize.of(test, model, new int[9], y, new double[9])).isEmpty();
  }
}
