package org.griplore.query.outlook;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The total of a field under the user's weights: each discipline less its mean over the spread
 * within tests, weighted; what a model has no expectation in is left out, and the other weights
 * stand in for it. Disciplines are taken as independent given what is known.
 *
 * @param models positions in the evidence of the models with at least half of the weight
 * @param expected in components within a test
 * @param low lower end of the interval
 * @param high upper end
 * @param place expected place
 * @param top share of drawn tests in which it is among the first
 */
record OutlookTotals(
    int[] models, double[] expected, double[] low, double[] high, double[] place, double[] top) {
  private static final double LEAST_COVERED = 0.5;

  /** Draws the totals; fewer than two models give no places. */
  static OutlookTotals of(
      List<String> disciplines,
      Map<String, DisciplineOutlook> outlooks,
      Map<String, Double> weights,
      int[] asked,
      double level,
      int first,
      long seed) {
    double whole = weights.values().stream().mapToDouble(w -> w).sum();
    double[] covered = new double[asked.length];
    double[] mean = new double[asked.length];
    double[][] totals = new double[FieldPlaces.DRAWS][asked.length];
    for (String key : disciplines) {
      double weight = weights.getOrDefault(key, 0.0);
      DisciplineOutlook outlook = outlooks.get(key);
      if (weight > 0 && outlook != null) {
        double scale = weight / Math.sqrt(outlook.components().within());
        double[][] draws = FieldPlaces.draws(outlook.results(), seed + disciplines.indexOf(key));
        for (int i = 0; i < outlook.field().length; i++) {
          int at = position(asked, outlook.field()[i]);
          covered[at] += weight;
          mean[at] += scale * outlook.results().mean()[i];
        }
        for (int draw = 0; draw < draws.length; draw++) {
          double middle = Arrays.stream(draws[draw]).average().orElseThrow();
          for (int i = 0; i < outlook.field().length; i++) {
            totals[draw][position(asked, outlook.field()[i])] += scale * (draws[draw][i] - middle);
          }
        }
      }
    }
    int[] in = new int[asked.length];
    int size = 0;
    for (int i = 0; i < asked.length; i++) {
      if (covered[i] > 0 && covered[i] >= LEAST_COVERED * whole) {
        in[size++] = i;
      }
    }
    return told(Arrays.copyOf(in, size), asked, mean, covered, totals, level, first);
  }

  private static OutlookTotals told(
      int[] in,
      int[] asked,
      double[] mean,
      double[] covered,
      double[][] totals,
      double level,
      int first) {
    int k = in.length;
    double[] low = new double[k];
    double[] high = new double[k];
    double[] place = new double[k];
    double[] within = new double[k];
    double[][] columns = new double[k][totals.length];
    double[] draw = new double[k];
    for (int d = 0; d < totals.length; d++) {
      for (int i = 0; i < k; i++) {
        draw[i] = totals[d][in[i]] / covered[in[i]];
        columns[i][d] = draw[i];
      }
      FieldPlaces.count(draw, first, within);
      for (int i = 0; i < k; i++) {
        place[i]++;
        for (double other : draw) {
          place[i] += other > draw[i] ? 1 : 0;
        }
      }
    }
    for (int i = 0; i < k; i++) {
      Arrays.sort(columns[i]);
      low[i] = columns[i][(int) Math.floor((1 - level) / 2 * (totals.length - 1))];
      high[i] = columns[i][(int) Math.ceil((1 + level) / 2 * (totals.length - 1))];
      place[i] /= totals.length;
      within[i] /= totals.length;
    }
    return new OutlookTotals(
        Arrays.stream(in).map(i -> asked[i]).toArray(),
        Arrays.stream(in).mapToDouble(i -> mean[i] / covered[i]).toArray(),
        low,
        high,
        place,
        within);
  }

  private static int position(int[] asked, int model) {
    for (int i = 0; i < asked.length; i++) {
      if (asked[i] == model) {
        return i;
      }
    }
    throw new IllegalArgumentException("model " + model + " was not asked for");
  }
}
