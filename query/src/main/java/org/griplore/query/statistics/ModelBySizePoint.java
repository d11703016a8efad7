package org.griplore.query.statistics;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The mixed model of {@link ModelBySize} at given variances: generalised least squares with V = D +
 * σ² Z Z', whose inverse is a diagonal less one rank a group, as each result is in one group of its
 * model and size.
 */
final class ModelBySizePoint {
  private final ModelBySizeDesign design;
  private final double ofSize;
  private final double[] inverse;
  private final double[] groupFactor;
  private final DMatrixRMaj covariance;
  private final double[] beta;
  private final double[] weightedResidual;
  private final double deviance;

  /**
   * Solves it.
   *
   * @param ofSize variance that stays with a model in a size
   * @param rest variance of the rest, of each result beside that of its runs
   */
  ModelBySizePoint(ModelBySizeDesign design, double ofSize, double rest) {
    this.design = design;
    this.ofSize = ofSize;
    int n = design.count();
    this.inverse = new double[n];
    double[] weight = new double[design.groups()];
    double logDeterminant = 0;
    for (int i = 0; i < n; i++) {
      double variance = rest + design.known()[i];
      inverse[i] = 1 / variance;
      weight[design.group()[i]] += inverse[i];
      logDeterminant += Math.log(variance);
    }
    this.groupFactor = new double[design.groups()];
    for (int g = 0; g < groupFactor.length; g++) {
      groupFactor[g] = ofSize / (1 + ofSize * weight[g]);
      logDeterminant += Math.log1p(ofSize * weight[g]);
    }
    int p = design.columns();
    DMatrixRMaj information = information(p);
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(p);
    if (!solver.setA(information.copy())) {
      throw new IllegalStateException("tests and models are not connected");
    }
    this.covariance = new DMatrixRMaj(p, p);
    solver.invert(covariance);
    double[] right = design.transposed(solveV(design.y()));
    this.beta = times(covariance, right);
    double[] residual = design.times(beta);
    for (int i = 0; i < n; i++) {
      residual[i] = design.y()[i] - residual[i];
    }
    this.weightedResidual = solveV(residual);
    double squares = 0;
    for (int i = 0; i < n; i++) {
      squares += residual[i] * weightedResidual[i];
    }
    this.deviance = logDeterminant + logDeterminant(information) + squares;
  }

  private static double logDeterminant(DMatrixRMaj information) {
    var cholesky =
        org.ejml.dense.row.factory.DecompositionFactory_DDRM.chol(information.numRows, true);
    DMatrixRMaj copy = information.copy();
    cholesky.decompose(copy);
    DMatrixRMaj lower = cholesky.getT(null);
    double sum = 0;
    for (int i = 0; i < lower.numRows; i++) {
      sum += 2 * Math.log(lower.get(i, i));
    }
    return sum;
  }

  /** X'V⁻¹X, result by result and then group by group. */
  private DMatrixRMaj information(int p) {
    DMatrixRMaj sum = new DMatrixRMaj(p, p);
    for (int i = 0; i < inverse.length; i++) {
      int t = design.testColumn(i);
      int m = design.modelColumn(i);
      sum.add(t, t, inverse[i]);
      if (m >= 0) {
        sum.add(m, m, inverse[i]);
        sum.add(t, m, inverse[i]);
        sum.add(m, t, inverse[i]);
      }
    }
    if (ofSize == 0) {
      return sum;
    }
    int[][] members = design.members();
    for (int g = 0; g < members.length; g++) {
      int[] columns = new int[2 * members[g].length];
      double[] values = new double[columns.length];
      int used = 0;
      for (int i : members[g]) {
        columns[used] = design.testColumn(i);
        values[used++] = inverse[i];
        if (design.modelColumn(i) >= 0) {
          columns[used] = design.modelColumn(i);
          values[used++] = inverse[i];
        }
      }
      for (int a = 0; a < used; a++) {
        for (int b = 0; b < used; b++) {
          sum.add(columns[a], columns[b], -groupFactor[g] * values[a] * values[b]);
        }
      }
    }
    return sum;
  }

  /** V⁻¹ times a vector over results. */
  double[] solveV(double[] vector) {
    double[] ofGroup = new double[groupFactor.length];
    for (int i = 0; i < vector.length; i++) {
      ofGroup[design.group()[i]] += inverse[i] * vector[i];
    }
    double[] solved = new double[vector.length];
    for (int i = 0; i < vector.length; i++) {
      int g = design.group()[i];
      solved[i] = inverse[i] * (vector[i] - groupFactor[g] * ofGroup[g]);
    }
    return solved;
  }

  /** P = V⁻¹ - V⁻¹X(X'V⁻¹X)⁻¹X'V⁻¹ times a vector over results. */
  double[] project(double[] vector) {
    double[] solved = solveV(vector);
    double[] fixed = solveV(design.times(times(covariance, design.transposed(solved))));
    for (int i = 0; i < solved.length; i++) {
      solved[i] -= fixed[i];
    }
    return solved;
  }

  /** Minus twice the restricted log likelihood, but for a constant. */
  double deviance() {
    return deviance;
  }

  double ofSize() {
    return ofSize;
  }

  /** P y. */
  double[] weightedResidual() {
    return weightedResidual;
  }

  /** y'P Z Z'P y and y'P P y. */
  double[] squares() {
    double[] own = new double[groupFactor.length];
    double rest = 0;
    for (int i = 0; i < weightedResidual.length; i++) {
      own[design.group()[i]] += weightedResidual[i];
      rest += weightedResidual[i] * weightedResidual[i];
    }
    return new double[] {Arrays.stream(own).map(sum -> sum * sum).sum(), rest};
  }

  /** Traces of P Z Z' and of P: what the two variances add to the deviance by themselves. */
  double[] traces() {
    double ofGroups = 0;
    double ofRest = 0;
    int n = inverse.length;
    double[] weight = new double[groupFactor.length];
    double[] squares = new double[groupFactor.length];
    for (int i = 0; i < n; i++) {
      int g = design.group()[i];
      weight[g] += inverse[i];
      squares[g] += inverse[i] * inverse[i];
      ofRest += inverse[i];
    }
    for (int g = 0; g < weight.length; g++) {
      ofGroups += weight[g] - groupFactor[g] * weight[g] * weight[g];
      ofRest -= groupFactor[g] * squares[g];
    }
    int p = design.columns();
    double[] unit = new double[n];
    for (int[] members : design.members()) {
      Arrays.fill(unit, 0);
      for (int i : members) {
        unit[i] = 1;
      }
      double[] row = design.transposed(solveOf(members, unit));
      ofGroups -= quadratic(row, p);
    }
    for (int i = 0; i < n; i++) {
      Arrays.fill(unit, 0);
      unit[i] = 1;
      double[] row = design.transposed(solveOf(design.members()[design.group()[i]], unit));
      ofRest -= quadratic(row, p);
    }
    return new double[] {ofGroups, ofRest};
  }

  /** V⁻¹ times a vector that is zero outside one group. */
  private double[] solveOf(int[] members, double[] vector) {
    double sum = 0;
    for (int i : members) {
      sum += inverse[i] * vector[i];
    }
    double[] solved = new double[vector.length];
    for (int i : members) {
      solved[i] = inverse[i] * (vector[i] - groupFactor[design.group()[i]] * sum);
    }
    return solved;
  }

  private double quadratic(double[] row, int p) {
    double sum = 0;
    for (int a = 0; a < p; a++) {
      if (row[a] != 0) {
        for (int b = 0; b < p; b++) {
          if (row[b] != 0) {
            sum += row[a] * covariance.get(a, b) * row[b];
          }
        }
      }
    }
    return sum;
  }

  /** Estimate of fixed effects times weights, and of groups' own parts times theirs. */
  double estimate(double[] fixed, double[] ofGroups) {
    double sum = 0;
    for (int a = 0; a < fixed.length; a++) {
      sum += fixed[a] * beta[a];
    }
    double[] own = new double[groupFactor.length];
    for (int i = 0; i < weightedResidual.length; i++) {
      own[design.group()[i]] += weightedResidual[i];
    }
    for (int g = 0; g < own.length; g++) {
      sum += ofGroups[g] * ofSize * own[g];
    }
    return sum;
  }

  /** Its prediction error variance, that of the variances aside. */
  double variance(double[] fixed, double[] ofGroups) {
    double[] vector = new double[inverse.length];
    double own = 0;
    for (int i = 0; i < vector.length; i++) {
      vector[i] = ofSize * ofGroups[design.group()[i]];
    }
    double[] solved = solveV(vector);
    for (int i = 0; i < vector.length; i++) {
      own -= vector[i] * solved[i];
    }
    for (double weight : ofGroups) {
      own += ofSize * weight * weight;
    }
    double[] rest = design.transposed(solved);
    for (int a = 0; a < rest.length; a++) {
      rest[a] = fixed[a] - rest[a];
    }
    return quadratic(rest, rest.length) + Math.max(0, own);
  }

  private static double[] times(DMatrixRMaj matrix, double[] vector) {
    double[] product = new double[vector.length];
    for (int a = 0; a < vector.length; a++) {
      double sum = 0;
      for (int b = 0; b < vector.length; b++) {
        sum += matrix.get(a, b) * vector[b];
      }
      product[a] = sum;
    }
    return product;
  }
}
