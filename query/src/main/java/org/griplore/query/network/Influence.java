package org.griplore.query.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.griplore.query.statistics.Tails;

/**
 * What each estimate of a fit hangs on: how it would read without one test or one model, exactly,
 * with variances held as they are. Taking arms I out is the same as giving each an effect of its
 * own (Cook and Weisberg 1982, Residuals and Influence in Regression, 3.4): with P the projection
 * of the fit, {@code g = P_II^+ (Py)_I}, an estimate changes by {@code -l_I'g} and its variance
 * grows by {@code l_I' P_II^+ l_I}, l what each result adds to it. All tests take one small
 * symmetric matrix each; after that every estimate costs the number of arms.
 */
public final class Influence {
  /** Pairs of arms whose share of P is formed for the removal of one model. */
  private static final long MODEL_WORK = 4_000_000L;

  private final NetworkFit fit;
  private final TestRows rows;
  private final double[] residual;
  private final double[] freed;
  private final double[] leverage;
  private final SmallSymmetric[] ofTest;

  Influence(NetworkFit fit) {
    this.fit = fit;
    this.rows = fit.basis().rows();
    Laplacian laplacian = fit.basis().laplacian();
    double[] w = fit.weights();
    double[] e = new double[rows.arms];
    for (int i = 0; i < e.length; i++) {
      e[i] = rows.y[i] - fit.effectAt(laplacian.column[i]);
    }
    this.residual = laplacian.centred(w, laplacian.testWeights(w), e);
    this.freed = new double[rows.arms];
    this.leverage = new double[rows.arms];
    this.ofTest = new SmallSymmetric[rows.tests];
    for (int t = 0; t < rows.tests; t++) {
      int from = rows.start[t];
      DMatrixRMaj p = projection(t);
      for (int i = 0; i < p.numRows; i++) {
        leverage[from + i] = p.get(i, i);
      }
      ofTest[t] = SmallSymmetric.of(p, largest(w, IntStream.range(from, rows.start[t + 1])));
      double[] g = ofTest[t].solve(Arrays.copyOfRange(residual, from, rows.start[t + 1]));
      System.arraycopy(g, 0, freed, from, g.length);
    }
  }

  private static double largest(double[] weights, IntStream arms) {
    return arms.mapToDouble(arm -> weights[arm]).max().orElseThrow();
  }

  /** P inside one test: D - D Z D with D = diag(w) - w w'/s. */
  private DMatrixRMaj projection(int t) {
    int from = rows.start[t];
    int k = rows.start[t + 1] - from;
    DMatrixRMaj d = centring(t);
    DMatrixRMaj z = new DMatrixRMaj(k, k);
    int[] column = fit.basis().laplacian().column;
    for (int i = 0; i < k; i++) {
      for (int j = 0; j <= i; j++) {
        double entry = fit.covariance().unscaled(column[from + i], column[from + j]);
        z.set(i, j, entry);
        z.set(j, i, entry);
      }
    }
    DMatrixRMaj p = new DMatrixRMaj(k, k);
    for (int i = 0; i < k; i++) {
      double[] dz = new double[k];
      for (int a = 0; a < k; a++) {
        double dia = d.get(i, a);
        for (int b = 0; b < k; b++) {
          dz[b] += dia * z.get(a, b);
        }
      }
      for (int j = 0; j <= i; j++) {
        double sum = d.get(i, j);
        for (int b = 0; b < k; b++) {
          sum -= dz[b] * d.get(b, j);
        }
        p.set(i, j, sum);
        p.set(j, i, sum);
      }
    }
    return p;
  }

  private DMatrixRMaj centring(int t) {
    int from = rows.start[t];
    int k = rows.start[t + 1] - from;
    double[] w = fit.weights();
    double s = 0;
    for (int i = 0; i < k; i++) {
      s += w[from + i];
    }
    DMatrixRMaj d = new DMatrixRMaj(k, k);
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        d.set(i, j, (i == j ? w[from + i] : 0) - w[from + i] * w[from + j] / s);
      }
    }
    return d;
  }

  /** Two models' difference without one test; the two must be comparable. */
  public Removal withoutTest(int first, int second, int test) {
    return withoutTest(RemovalTarget.difference(fit, first, second), kept(test));
  }

  /** The test whose removal moves a difference most; it counts most when nothing would be left. */
  public Optional<TestRemoval> strongestTest(int first, int second) {
    return strongestTest(RemovalTarget.difference(fit, first, second));
  }

  /** The test whose removal moves a model's effect most. */
  public Optional<TestRemoval> strongestTest(int model) {
    return strongestTest(RemovalTarget.effect(fit, model));
  }

  /**
   * One test's removal.
   *
   * @param test number of the test
   */
  public record TestRemoval(int test, Removal removal) {}

  /**
   * One model's removal.
   *
   * @param model number of the model
   */
  public record ModelRemoval(int model, Removal removal) {}

  private Optional<TestRemoval> strongestTest(RemovalTarget target) {
    int strongest = -1;
    double most = -1;
    for (int t = 0; t < rows.tests; t++) {
      double change = 0;
      boolean pulls = false;
      for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
        change -= target.pull()[i] * freed[i];
        pulls |= target.pull()[i] != 0;
      }
      if (pulls && ofTest[t].holdsTogether() && !ofTest[t].reaches(pullOf(target, t))) {
        return Optional.of(new TestRemoval(rows.testNumber[t], withoutTest(target, t)));
      }
      if (pulls && Math.abs(change) > most) {
        most = Math.abs(change);
        strongest = t;
      }
    }
    return strongest < 0
        ? Optional.empty()
        : Optional.of(new TestRemoval(rows.testNumber[strongest], withoutTest(target, strongest)));
  }

  private double[] pullOf(RemovalTarget target, int t) {
    return Arrays.copyOfRange(target.pull(), rows.start[t], rows.start[t + 1]);
  }

  private Removal withoutTest(RemovalTarget target, int t) {
    return removal(
        target,
        ofTest[t],
        pullOf(target, t),
        Arrays.copyOfRange(residual, rows.start[t], rows.start[t + 1]));
  }

  private Removal removal(
      RemovalTarget target, SmallSymmetric p, double[] pull, double[] residuals) {
    double root = Math.sqrt(fit.scale());
    Estimate before = fit.estimate(target.value(), root * Math.sqrt(target.variance()));
    if (!p.reaches(pull)) {
      return new Removal(before, Optional.empty());
    }
    double[] g = p.solve(pull);
    double change = 0;
    double more = 0;
    for (int i = 0; i < pull.length; i++) {
      change -= g[i] * residuals[i];
      more += g[i] * pull[i];
    }
    double variance = target.variance() + Math.max(0, more);
    return new Removal(
        before, Optional.of(fit.estimate(target.value() + change, root * Math.sqrt(variance))));
  }

  /**
   * The model, neither of the two, whose removal from every test moves their difference most; of a
   * large network those that the tests of the two held, as far as they are not too many.
   */
  public Optional<ModelRemoval> strongestModel(int first, int second) {
    RemovalTarget target = RemovalTarget.difference(fit, first, second);
    ModelRemoval strongest = null;
    double most = -1;
    for (int model : candidates(target, first, second)) {
      Removal removal = withoutModel(target, model);
      double change = removal.change().orElse(Double.POSITIVE_INFINITY);
      if (Math.abs(change) > most) {
        most = Math.abs(change);
        strongest = new ModelRemoval(model, removal);
      }
    }
    return Optional.ofNullable(strongest);
  }

  /** Models by how far their arms pull by themselves, the strongest first, within the work. */
  private List<Integer> candidates(RemovalTarget target, int first, int second) {
    double[] pulled = new double[fit.models()];
    int[] count = new int[fit.models()];
    for (int i = 0; i < rows.arms; i++) {
      if (target.pull()[i] != 0 && leverage[i] > 0) {
        pulled[rows.model[i]] += Math.abs(target.pull()[i] * residual[i]) / leverage[i];
      }
      count[rows.model[i]]++;
    }
    List<Integer> models = new ArrayList<>();
    for (int m = 0; m < pulled.length; m++) {
      if (m != first && m != second && pulled[m] > 0) {
        models.add(m);
      }
    }
    models.sort((a, b) -> Double.compare(pulled[b], pulled[a]));
    long work = 0;
    long field = Math.max(2, rows.arms / Math.max(1, rows.tests));
    List<Integer> taken = new ArrayList<>();
    for (int model : models) {
      long its = field * field * count[model] * count[model];
      if (work + its <= MODEL_WORK) {
        work += its;
        taken.add(model);
      }
    }
    return taken;
  }

  /** Two models' difference without a third model. */
  public Removal withoutModel(int first, int second, int model) {
    return withoutModel(RemovalTarget.difference(fit, first, second), model);
  }

  private Removal withoutModel(RemovalTarget target, int model) {
    int[] arms = fit.basis().armsOfModel().of(model);
    int n = arms.length;
    DMatrixRMaj p = new DMatrixRMaj(n, n);
    double[] pull = new double[n];
    double[] residuals = new double[n];
    for (int a = 0; a < n; a++) {
      pull[a] = target.pull()[arms[a]];
      residuals[a] = residual[arms[a]];
      for (int b = 0; b <= a; b++) {
        double entry = a == b ? leverage[arms[a]] : -shared(arms[a], arms[b]);
        p.set(a, b, entry);
        p.set(b, a, entry);
      }
    }
    double largest = largest(fit.weights(), Arrays.stream(arms));
    return removal(target, SmallSymmetric.of(p, largest), pull, residuals);
  }

  /** Row of one arm times Z times that of another in another test. */
  private double shared(int arm, int other) {
    int t = fit.basis().armsOfModel().testOfArm(arm);
    int u = fit.basis().armsOfModel().testOfArm(other);
    double[] mine = rowOf(arm, t);
    double[] its = rowOf(other, u);
    int[] column = fit.basis().laplacian().column;
    double sum = 0;
    for (int i = 0; i < mine.length; i++) {
      double part = 0;
      for (int j = 0; j < its.length; j++) {
        part +=
            its[j]
                * fit.covariance().unscaled(column[rows.start[t] + i], column[rows.start[u] + j]);
      }
      sum += mine[i] * part;
    }
    return sum;
  }

  private double[] rowOf(int arm, int t) {
    double[] w = fit.weights();
    double s = 0;
    for (int i = rows.start[t]; i < rows.start[t + 1]; i++) {
      s += w[i];
    }
    double[] row = new double[rows.start[t + 1] - rows.start[t]];
    for (int i = 0; i < row.length; i++) {
      row[i] = -w[arm] * w[rows.start[t] + i] / s;
    }
    row[arm - rows.start[t]] += w[arm];
    return row;
  }

  private int kept(int test) {
    int at = Arrays.binarySearch(rows.testNumber, test);
    if (at < 0) {
      throw new IllegalArgumentException("test " + test + " has no two models");
    }
    return at;
  }

  /**
   * A result that fits no other.
   *
   * @param test its test
   * @param model its model
   * @param studentised its deleted residual over its standard error
   * @param p chance that any result of the network would be so far off, by Bonferroni's bound
   */
  public record Misfit(int test, int model, double studentised, double p) {}

  /**
   * Results whose deleted residual, the distance from where all other results put it, is larger
   * than chance would give any result of the network, the farthest first (studentised by the
   * scatter of the others; Cook and Weisberg 1982, 2.2). None with fewer than three residual
   * degrees of freedom.
   *
   * @param chance such as 0.05
   */
  public List<Misfit> misfits(double chance) {
    List<Misfit> found = new ArrayList<>();
    int df = fit.residualDf();
    double q = fit.point().quadratic;
    for (int i = 0; df >= 3 && i < rows.arms; i++) {
      OptionalDouble studentised = studentised(i, q, df);
      if (studentised.isPresent()) {
        double p =
            Math.min(1, rows.arms * Tails.studentTwoSided(studentised.getAsDouble(), df - 1.0));
        if (p < chance) {
          int test = rows.testNumber[fit.basis().armsOfModel().testOfArm(i)];
          found.add(new Misfit(test, rows.model[i], studentised.getAsDouble(), p));
        }
      }
    }
    found.sort((a, b) -> Double.compare(Math.abs(b.studentised), Math.abs(a.studentised)));
    return List.copyOf(found);
  }

  private OptionalDouble studentised(int arm, double q, int df) {
    double w = fit.weights()[arm];
    if (leverage[arm] < 1e-9 * w) {
      return OptionalDouble.empty();
    }
    double r = residual[arm] / Math.sqrt(leverage[arm]);
    double others = (q - r * r) / (df - 1);
    return others > 0 ? OptionalDouble.of(r / Math.sqrt(others)) : OptionalDouble.empty();
  }
}
