package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** Results by test, model, and group of model and size, numbered for {@link ModelBySize}. */
final class ModelBySizeDesign {
  private final double[] y;
  private final double[] known;
  private final int[] test;
  private final int[] model;
  private final int[] group;
  private final int[] columnOfModel;
  private final int[] component;
  private final int[][] members;
  private final Map<Long, Integer> groups = new HashMap<>();
  private final Map<Integer, Integer> models = new LinkedHashMap<>();
  private final int tests;
  private final int columns;

  ModelBySizeDesign(int[] test, int[] model, int[] size, double[] y, double[] known) {
    this.y = y;
    this.known = known;
    int n = y.length;
    this.test = new int[n];
    this.model = new int[n];
    this.group = new int[n];
    Map<Integer, Integer> numbered = new HashMap<>();
    for (int i = 0; i < n; i++) {
      this.test[i] = numbered.computeIfAbsent(test[i], t -> numbered.size());
      this.model[i] = models.computeIfAbsent(model[i], m -> models.size());
      this.group[i] = groups.computeIfAbsent(key(model[i], size[i]), g -> groups.size());
    }
    this.tests = numbered.size();
    int[] count = new int[groups.size()];
    for (int g : group) {
      count[g]++;
    }
    this.members = new int[groups.size()][];
    Arrays.setAll(members, g -> new int[count[g]]);
    for (int i = n - 1; i >= 0; i--) {
      members[group[i]][--count[group[i]]] = i;
    }
    this.component = components();
    this.columnOfModel = new int[models.size()];
    boolean[] begun = new boolean[models.size()];
    int next = tests;
    for (int m = 0; m < columnOfModel.length; m++) {
      // the first model of a component is what its others are compared with
      columnOfModel[m] = begun[component[m]] ? next++ : -1;
      begun[component[m]] = true;
    }
    this.columns = next;
  }

  private static long key(int model, int size) {
    return (long) model << 32 | size & 0xffffffffL;
  }

  private int[] components() {
    DisjointSets sets = new DisjointSets(models.size());
    int[] first = new int[tests];
    Arrays.fill(first, -1);
    for (int i = 0; i < test.length; i++) {
      if (first[test[i]] < 0) {
        first[test[i]] = model[i];
      } else {
        sets.join(first[test[i]], model[i]);
      }
    }
    int[] component = new int[models.size()];
    for (int m = 0; m < component.length; m++) {
      component[m] = sets.of(m);
    }
    return component;
  }

  int count() {
    return y.length;
  }

  double[] y() {
    return y;
  }

  double[] known() {
    return known;
  }

  int[] group() {
    return group;
  }

  int groups() {
    return members.length;
  }

  int[][] members() {
    return members;
  }

  int columns() {
    return columns;
  }

  int testColumn(int i) {
    return test[i];
  }

  int modelColumn(int i) {
    return columnOfModel[model[i]];
  }

  /** Position of the model of this number; null when it has no result. */
  Integer model(int number) {
    return models.get(number);
  }

  /** Position of the group of a model and size; null when it was not tested in it. */
  Integer group(int model, int size) {
    return groups.get(key(model, size));
  }

  boolean areCompared(int one, int other) {
    return component[one] == component[other];
  }

  /** Weights of one model's effect less another's over the columns. */
  double[] difference(int one, int other) {
    double[] weights = new double[columns];
    if (columnOfModel[one] >= 0) {
      weights[columnOfModel[one]] += 1;
    }
    if (columnOfModel[other] >= 0) {
      weights[columnOfModel[other]] -= 1;
    }
    return weights;
  }

  /** X times coefficients. */
  double[] times(double[] coefficients) {
    double[] product = new double[y.length];
    for (int i = 0; i < product.length; i++) {
      product[i] = coefficients[test[i]] + (modelColumn(i) < 0 ? 0 : coefficients[modelColumn(i)]);
    }
    return product;
  }

  /** X' times a vector over results. */
  double[] transposed(double[] vector) {
    double[] product = new double[columns];
    for (int i = 0; i < vector.length; i++) {
      if (vector[i] != 0) {
        product[test[i]] += vector[i];
        if (modelColumn(i) >= 0) {
          product[modelColumn(i)] += vector[i];
        }
      }
    }
    return product;
  }
}
