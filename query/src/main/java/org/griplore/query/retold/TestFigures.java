package org.griplore.query.retold;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.griplore.store.archive.ResultColumns;

/**
 * A test's figures as columns of equal length, by discipline and by model inside it.
 *
 * @param key discipline and model as one number
 * @param unit -1 where there is a place only
 * @param value NaN where there is a place only
 * @param place 0 where none is published
 * @param log natural logarithm of the value; NaN where the discipline is not one of ratios
 * @param step to which the values of the discipline and unit are rounded in this test, or 1 for
 *     places
 * @param result position of the result
 */
record TestFigures(
    long[] key,
    int[] unit,
    double[] value,
    double[] log,
    int[] place,
    double[] step,
    int[] result) {

  static long key(int discipline, int model) {
    return (long) discipline << 32 | model;
  }

  static TestFigures of(TreeMap<Long, Integer> byKey, ResultColumns results, boolean[] isRatio) {
    int n = byKey.size();
    TestFigures figures =
        new TestFigures(
            new long[n],
            new int[n],
            new double[n],
            new double[n],
            new int[n],
            new double[n],
            new int[n]);
    int at = 0;
    for (Map.Entry<Long, Integer> figure : byKey.entrySet()) {
      int r = figure.getValue();
      figures.key[at] = figure.getKey();
      figures.unit[at] = results.unit()[r];
      figures.value[at] = results.value()[r];
      boolean positive = figures.unit[at] >= 0 && figures.value[at] > 0;
      figures.log[at] =
          positive && isRatio[results.discipline()[r]] ? Math.log(figures.value[at]) : Double.NaN;
      figures.place[at] = results.place()[r];
      figures.result[at] = r;
      at++;
    }
    for (int from = 0; from < n; from = figures.endOfDiscipline(from)) {
      figures.findSteps(from, figures.endOfDiscipline(from));
    }
    return figures;
  }

  private int endOfDiscipline(int from) {
    int to = from + 1;
    while (to < key.length && discipline(to) == discipline(from)) {
      to++;
    }
    return to;
  }

  private void findSteps(int from, int to) {
    for (int i = from; i < to; i++) {
      if (unit[i] < 0) {
        step[i] = 1;
      } else if (step[i] == 0) {
        int its = unit[i];
        double[] values = new double[to - from];
        int count = 0;
        for (int j = i; j < to; j++) {
          if (unit[j] == its) {
            values[count++] = value[j];
          }
        }
        double found = Rounding.step(Arrays.copyOf(values, count));
        for (int j = i; j < to; j++) {
          if (unit[j] == its) {
            step[j] = found;
          }
        }
      }
    }
  }

  int discipline(int i) {
    return (int) (key[i] >> 32);
  }

  int model(int i) {
    return (int) key[i];
  }

  int size() {
    return key.length;
  }

  /** Whether figures at two positions can be compared: one unit, or places without values. */
  boolean isComparable(int i, TestFigures other, int j) {
    return unit[i] == other.unit[j] && (unit[i] >= 0 || place[i] > 0 && other.place[j] > 0);
  }

  /** Whether figures that can be compared are equal to the coarser rounding. */
  boolean isEqual(int i, TestFigures other, int j) {
    double apart = unit[i] < 0 ? place[i] - other.place[j] : value[i] - other.value[j];
    return Math.abs(apart) <= Math.max(step[i], other.step[j]) / 2 * (1 + 1e-6);
  }

  /**
   * Whether the two could be one test at all, found cheaply: more than half of their figures in one
   * unit are equal, or more than half of their figures stand to the other test's as their
   * neighbour's do, better or worse with more of the unit.
   */
  boolean couldBe(TestFigures other) {
    int compared = 0;
    int equal = 0;
    Parallel parallel = new Parallel();
    int i = 0;
    int j = 0;
    while (i < key.length && j < other.key.length) {
      if (key[i] == other.key[j]) {
        if (isComparable(i, other, j)) {
          compared++;
          equal += isEqual(i, other, j) ? 1 : 0;
        }
        if (!Double.isNaN(log[i]) && !Double.isNaN(other.log[j])) {
          parallel.add(
              discipline(i),
              log[i],
              other.log[j],
              step[i] / value[i] + other.step[j] / other.value[j]);
        }
        i++;
        j++;
      } else if (key[i] < other.key[j]) {
        i++;
      } else {
        j++;
      }
    }
    return 2 * equal > compared || parallel.isMost();
  }

  /** How many figures stand to another test's as those of the model before. */
  private static final class Parallel {
    private int discipline = -1;
    private double ratio;
    private double product;
    private double reach;
    private int neighbours;
    private int parallel;

    void add(int its, double own, double other, double within) {
      if (its == discipline) {
        neighbours++;
        parallel +=
            Math.abs(own - other - ratio) <= within + reach
                    || Math.abs(own + other - product) <= within + reach
                ? 1
                : 0;
      }
      discipline = its;
      ratio = own - other;
      product = own + other;
      reach = within;
    }

    boolean isMost() {
      return neighbours >= TestPairs.FEWEST - 1 && 2 * parallel > neighbours;
    }
  }
}
