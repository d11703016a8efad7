package org.griplore.query.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.Arms;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Unit;

/**
 * The network of one discipline under one filter: which results went in, what was left out, and the
 * fit. Models and tests are numbered by their positions in the evidence.
 */
final class Network {
  private final Measure measure;
  private final NetworkFit fit;
  private final List<Integer> entries;
  private final Exclusions excluded;

  private Network(Measure measure, NetworkFit fit, List<Integer> entries, Exclusions excluded) {
    this.measure = measure;
    this.fit = fit;
    this.entries = entries;
    this.excluded = excluded;
  }

  /** Fits the network; empty when no test has two models with results. */
  static Optional<Network> of(Evidence evidence, String key, Filter filter, VarianceMethod method) {
    Discipline discipline = evidence.catalogue().get(key);
    Measure measure = new Measure(discipline);
    Exclusions excluded = new Exclusions();
    int position = evidence.discipline(key);
    if (position < 0) {
      return Optional.empty();
    }
    Columns columns = new Columns(evidence, position, measure, filter, excluded);
    if (columns.size == 0 || !columns.hasPair()) {
      return Optional.empty();
    }
    NetworkFit fit = NetworkFitter.fit(columns.arms(), FitOptions.of(method));
    if (fit.singleArmTests() > 0) {
      excluded.add("tests with one such result only", fit.singleArmTests());
    }
    return Optional.of(new Network(measure, fit, columns.entries, excluded));
  }

  Measure measure() {
    return measure;
  }

  NetworkFit fit() {
    return fit;
  }

  /** Entries whose results went in. */
  List<Integer> entries() {
    return entries;
  }

  Exclusions excluded() {
    return excluded;
  }

  /** Gathers the arms; the first figure of a model in a test counts. */
  private static final class Columns {
    final Evidence evidence;
    final int[] test;
    final int[] model;
    final double[] y;
    final double[] variance;
    final List<Integer> entries = new ArrayList<>();
    int size;

    Columns(
        Evidence evidence, int discipline, Measure measure, Filter filter, Exclusions excluded) {
      this.evidence = evidence;
      int most = evidence.resultsOfDiscipline().count(discipline);
      this.test = new int[most];
      this.model = new int[most];
      this.y = new double[most];
      this.variance = new double[most];
      ResultColumns results = evidence.results();
      Unit[] units = units(evidence);
      Set<Long> seen = new HashSet<>();
      for (int i = evidence.resultsOfDiscipline().from(discipline);
          i < evidence.resultsOfDiscipline().to(discipline);
          i++) {
        int result = evidence.resultsOfDiscipline().rows()[i];
        int entry = results.entry()[result];
        Optional<String> reason = filter.reasonAgainst(entry);
        if (reason.isPresent()) {
          excluded.add(reason.get());
          continue;
        }
        if (results.unit()[result] < 0) {
          excluded.add("places without values");
          continue;
        }
        Unit unit = units[results.unit()[result]];
        double value = results.value()[result];
        double on = measure.takes(unit) ? measure.of(value, unit) : Double.NaN;
        if (Double.isNaN(on)) {
          excluded.add("values on another scale (marks, points or levels)");
          continue;
        }
        int t = evidence.entries().test()[entry];
        int m = evidence.entries().model()[entry];
        if (!seen.add((long) t << 32 | m)) {
          excluded.add("a second figure of a model in a test");
          continue;
        }
        add(t, m, on, measure.variance(value, results.spread()[result], results.runs()[result]));
        entries.add(entry);
      }
    }

    private static Unit[] units(Evidence evidence) {
      return evidence.units().stream()
          .map(symbol -> Unit.ofSymbol(symbol).orElseThrow())
          .toArray(Unit[]::new);
    }

    private void add(int t, int m, double value, double itsVariance) {
      test[size] = t;
      model[size] = m;
      y[size] = value;
      variance[size] = itsVariance;
      size++;
    }

    boolean hasPair() {
      int[] sorted = Arrays.copyOf(test, size);
      Arrays.sort(sorted);
      for (int i = 1; i < size; i++) {
        if (sorted[i] == sorted[i - 1]) {
          return true;
        }
      }
      return false;
    }

    Arms arms() {
      return new Arms(
          evidence.tests().size(),
          evidence.models().size(),
          Arrays.copyOf(test, size),
          Arrays.copyOf(model, size),
          Arrays.copyOf(y, size),
          Arrays.copyOf(variance, size));
    }
  }
}
