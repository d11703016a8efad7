package org.griplore.query.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.griplore.query.bench.GeneratedNetwork.Time;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.NetworkEstimates;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;

/**
 * Times of network fits on generated archives, each beside a peer in the same run: one factor and
 * inverse of the same order by EJML's dense Cholesky, which is what one step of an estimation costs
 * where nothing is known of the matrix (a fit takes several steps). Processor time is given beside
 * elapsed time, because the latter says little on a busy machine.
 *
 * <pre>
 * mvn -q -Pbench -DskipTests -Dbench=org.griplore.query.bench.NetworkBench verify
 * </pre>
 *
 * <p>The argument {@code quick} takes fewer rounds.
 */
public final class NetworkBench {
  private NetworkBench() {}

  /**
   * Prints a line a case: best and median elapsed milliseconds, median processor milliseconds over
   * all cores, the peer's elapsed median and its ratio to ours.
   */
  public static void main(String[] args) {
    boolean quick = args.length > 0 && args[0].equals("quick");
    int large = quick ? 2 : 5;
    print("case", "best ms", "median ms", "cpu ms", "peer ms", "peer/median");
    small(quick ? 20 : 200);
    large("2000 models, 5000 tests, local", 5_000, Time.LOCAL, large);
    large("2000 models, 5000 tests, timeless", 5_000, Time.NONE, large);
    large("2000 models, 20000 tests, local", 20_000, Time.LOCAL, large);
    large("2000 models, 20000 tests, timeless", 20_000, Time.NONE, large);
  }

  private static void small(int rounds) {
    GeneratedNetwork g = GeneratedNetwork.of(49, 60, 6, Time.LOCAL, 7);
    double peer = median(times(rounds, () -> dense(49, 7))[0]);
    report(
        "49 models, 60 tests: REML, all pairs, scores",
        times(rounds, () -> allPairs(NetworkFitter.fit(g.arms(), reml()))),
        peer);
  }

  private static double allPairs(NetworkFit fit) {
    double sum = fit.standings().size();
    for (int a = 0; a < 49; a++) {
      for (int b = 0; b < a; b++) {
        if (fit.compare(a, b) instanceof EstimatedComparison c) {
          sum += c.difference() + c.se().orElseThrow();
        }
      }
    }
    return sum;
  }

  private static void large(String name, int tests, Time time, int rounds) {
    GeneratedNetwork g = GeneratedNetwork.of(2_000, tests, 8, time, 11);
    double peer = median(times(Math.min(rounds, 2), () -> dense(2_000, 11))[0]);
    NetworkFit[] last = new NetworkFit[1];
    report(
        name + ": REML",
        times(
            rounds,
            () -> {
              last[0] = NetworkFitter.fit(g.arms(), reml());
              return last[0].tauSquared().orElseThrow();
            }),
        peer);
    NetworkFit fit = last[0];
    System.out.printf(
        Locale.ROOT,
        "  heterogeneity sd %.5f (truth %.5f), %d factors, %d MB in use%n",
        Math.sqrt(fit.tauSquared().orElseThrow()),
        Math.sqrt(g.tauSquared()),
        fit.evaluations(),
        usedMegabytes());
    report(
        name + ": estimates alone",
        times(
            4 * rounds,
            () ->
                NetworkEstimates.of(g.arms(), OptionalDouble.empty())
                    .difference(999, 1_001)
                    .orElseThrow()),
        peer);
    SplittableRandom random = new SplittableRandom(3);
    double[] each = new double[1];
    report(
        name + ": 10000 contrasts",
        times(
            rounds,
            () -> {
              for (int k = 0; k < 10_000; k++) {
                if (fit.compare(random.nextInt(2_000), random.nextInt(2_000))
                    instanceof EstimatedComparison c) {
                  each[0] += c.se().orElseThrow();
                }
              }
              return each[0];
            }),
        peer);
    report(
        name + ": 1000 direct/indirect splits",
        times(
            rounds,
            () -> {
              for (int k = 0; k < 1_000; k++) {
                each[0] += fit.evidence(random.nextInt(2_000), random.nextInt(2_000)).directTests();
              }
              return each[0];
            }),
        peer);
    report(name + ": scores of all", times(rounds, () -> fit.standings().size()), peer);
  }

  private static FitOptions reml() {
    return FitOptions.of(VarianceMethod.REML);
  }

  /** One factor and inverse of a dense matrix of this order by EJML. */
  private static double dense(int n, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    DMatrixRMaj a = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double w = random.nextDouble();
        a.set(i, j, -w);
        a.set(j, i, -w);
        a.add(i, i, w);
        a.add(j, j, w);
      }
      a.add(i, i, 1e-3);
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(n);
    if (!solver.setA(a)) {
      throw new IllegalStateException("The peer's matrix is not positive definite.");
    }
    DMatrixRMaj inverse = new DMatrixRMaj(n, n);
    solver.invert(inverse);
    return inverse.get(0, 0);
  }

  /** Elapsed and processor milliseconds of each round. */
  private static double[][] times(int rounds, Supplier<? extends Number> task) {
    double[][] ms = new double[2][rounds];
    for (int r = 0; r < rounds; r++) {
      long from = System.nanoTime();
      long cpu = processorNanos();
      double result = task.get().doubleValue();
      ms[0][r] = (System.nanoTime() - from) / 1e6;
      ms[1][r] = (processorNanos() - cpu) / 1e6;
      if (Double.isNaN(result)) {
        throw new IllegalStateException("A timed task answered NaN.");
      }
    }
    return ms;
  }

  private static long processorNanos() {
    return ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean os
        ? os.getProcessCpuTime()
        : 0;
  }

  private static void report(String name, double[][] ms, double peer) {
    double median = median(ms[0]);
    print(
        name,
        format(java.util.Arrays.stream(ms[0]).min().orElseThrow()),
        format(median),
        format(median(ms[1])),
        format(peer),
        format(peer / median));
  }

  private static double median(double[] ms) {
    double[] sorted = ms.clone();
    java.util.Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static long usedMegabytes() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
  }

  private static String format(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static void print(String name, String... cells) {
    System.out.printf(Locale.ROOT, "%-62s %9s %9s %9s %9s %11s%n", concat(name, cells));
  }

  private static Object[] concat(String name, String[] cells) {
    Object[] all = new Object[cells.length + 1];
    all[0] = name;
    System.arraycopy(cells, 0, all, 1, cells.length);
    return all;
  }
}
