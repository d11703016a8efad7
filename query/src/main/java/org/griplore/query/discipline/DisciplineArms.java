package org.griplore.query.discipline;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.vocabulary.Unit;

/**
 * The results of one discipline that count under a filter, a column a quantity, a row an arm (one
 * model in one test). Several results that a report gives of a model in a test (sets of the day)
 * are one arm, their mean ({@link RepeatedArms}); of several reports of a test the first counts.
 * Tests, models, entries and results are positions in the evidence.
 */
public final class DisciplineArms {
  /** Why a further result of a model has no arm of its own. */
  private static final String AVERAGED =
      "further results of a model in a test, averaged with its first";

  private final ComparisonScale measure;
  private final Exclusions excluded = new Exclusions();
  private int size;
  private int[] test;
  private int[] model;
  private int[] entry;
  private int[] result;
  private double[] y;
  private double[] variance;
  private int[] runs;
  private OptionalDouble repeatVariance = OptionalDouble.empty();

  private DisciplineArms(ComparisonScale measure) {
    this.measure = measure;
  }

  /** Gathers them; none when the discipline does not occur. */
  public static DisciplineArms of(Evidence evidence, String discipline, Filter filter) {
    DisciplineArms arms =
        new DisciplineArms(new ComparisonScale(evidence.catalogue().get(discipline)));
    int position = evidence.discipline(discipline);
    arms.room(position < 0 ? 0 : evidence.resultsOfDiscipline().count(position));
    if (position >= 0) {
      arms.gather(evidence, position, filter);
    }
    arms.room(arms.size);
    return arms;
  }

  private void room(int length) {
    test = test == null ? new int[length] : Arrays.copyOf(test, length);
    model = model == null ? new int[length] : Arrays.copyOf(model, length);
    entry = entry == null ? new int[length] : Arrays.copyOf(entry, length);
    result = result == null ? new int[length] : Arrays.copyOf(result, length);
    y = y == null ? new double[length] : Arrays.copyOf(y, length);
    variance = variance == null ? new double[length] : Arrays.copyOf(variance, length);
    runs = runs == null ? new int[length] : Arrays.copyOf(runs, length);
  }

  private void gather(Evidence evidence, int discipline, Filter filter) {
    ResultColumns results = evidence.results();
    Unit[] units =
        evidence.units().stream()
            .map(symbol -> Unit.ofSymbol(symbol).orElseThrow())
            .toArray(Unit[]::new);
    Map<Long, Integer> arms = new HashMap<>();
    RepeatedArms repeated = new RepeatedArms();
    int to = evidence.resultsOfDiscipline().to(discipline);
    for (int i = evidence.resultsOfDiscipline().from(discipline); i < to; i++) {
      int row = evidence.resultsOfDiscipline().rows()[i];
      int its = results.entry()[row];
      String reason = filter.reasonAgainstResult(row).orElse(null);
      double value = Double.NaN;
      if (reason == null) {
        int unit = results.unit()[row];
        value = unit < 0 ? Double.NaN : on(results.value()[row], units[unit]);
        reason =
            unit < 0
                ? "places without values"
                : Double.isNaN(value) ? "values on another scale (marks, points or levels)" : null;
      }
      if (reason == null) {
        long key = (long) evidence.entries().test()[its] << 32 | evidence.entries().model()[its];
        Integer first = arms.putIfAbsent(key, size);
        if (first != null) {
          int[] report = evidence.entries().report();
          boolean alike =
              evidence.isSameTyre(its, entry[first])
                  && results.circumstance()[row] == results.circumstance()[result[first]];
          boolean repeat = alike && report[its] == report[entry[first]];
          if (repeat) {
            repeated.add(first, y[first], variance[first], value, varianceOf(results, row));
          }
          reason =
              repeat
                  ? AVERAGED
                  : alike
                      ? "results that another report of the test has told"
                      : "other sizes, states or versions of a model in a test";
        }
      }
      if (reason != null) {
        excluded.add(reason);
        continue;
      }
      test[size] = evidence.entries().test()[its];
      model[size] = evidence.entries().model()[its];
      entry[size] = its;
      result[size] = row;
      y[size] = value;
      variance[size] = varianceOf(results, row);
      runs[size] = results.runs()[row];
      size++;
    }
    repeated.average(y, variance);
    for (int i = 0; i < size; i++) {
      runs[i] = repeated.holds(i) ? 0 : runs[i];
    }
    repeatVariance = repeated.pooledVariance();
  }

  private double varianceOf(ResultColumns results, int row) {
    return measure.variance(results.value()[row], results.spread()[row], results.runs()[row]);
  }

  /** The arms of some entries. */
  DisciplineArms within(IntPredicate entries) {
    DisciplineArms some = new DisciplineArms(measure);
    some.room(size);
    for (int i = 0; i < size; i++) {
      if (entries.test(entry[i])) {
        some.test[some.size] = test[i];
        some.model[some.size] = model[i];
        some.entry[some.size] = entry[i];
        some.result[some.size] = result[i];
        some.y[some.size] = y[i];
        some.variance[some.size] = variance[i];
        some.runs[some.size] = runs[i];
        some.size++;
      }
    }
    some.room(some.size);
    return some;
  }

  private double on(double value, Unit unit) {
    return measure.takes(unit) ? measure.of(value, unit) : Double.NaN;
  }

  /** The scale the results stand on. */
  public ComparisonScale measure() {
    return measure;
  }

  /** What was left out, with reasons. */
  public Exclusions excluded() {
    return excluded;
  }

  /** How many arms there are. */
  public int size() {
    return size;
  }

  /** The test of each arm. */
  public int[] test() {
    return test;
  }

  /** The model of each arm. */
  public int[] model() {
    return model;
  }

  /** The entry of each arm. */
  public int[] entry() {
    return entry;
  }

  /** The result of each arm. */
  public int[] result() {
    return result;
  }

  /** The result of each arm on the discipline's scale, plus is better. */
  public double[] y() {
    return y;
  }

  /** The variance of each arm by its own runs; NaN when not known. */
  public double[] variance() {
    return variance;
  }

  /** Variance of single results of a model in one test, pooled; empty where none was repeated. */
  public OptionalDouble repeatVariance() {
    return repeatVariance;
  }

  /** The number of runs behind each arm; 0 when not stated, or where several results are one. */
  int[] runs() {
    return runs;
  }

  /** Whether any test has two models. */
  boolean hasPair() {
    int[] sorted = test.clone();
    Arrays.sort(sorted);
    for (int i = 1; i < sorted.length; i++) {
      if (sorted[i] == sorted[i - 1]) {
        return true;
      }
    }
    return false;
  }
}
