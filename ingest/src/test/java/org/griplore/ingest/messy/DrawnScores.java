package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.List;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** Totals and places of a drawn field: the mean of what was measured, each in its own spread. */
final class DrawnScores {
  private final List<Double> points = new ArrayList<>();

  DrawnScores(DrawnTest test) {
    for (int tyre = 0; tyre < test.tyres().size(); tyre++) {
      double sum = 0;
      for (DrawnTest.Measure measure : test.measures()) {
        sum += standing(measure, tyre);
      }
      points.add(DrawnTest.rounded(7.3 + sum / test.measures().size(), 1));
    }
  }

  private static double standing(DrawnTest.Measure measure, int tyre) {
    boolean low =
        DisciplineCatalogue.standard().get(measure.discipline()).directionOf(measure.unit())
            == Direction.LOW;
    double z = (measure.values().get(tyre) - mean(measure.values())) / sd(measure.values());
    return low ? -z : z;
  }

  /** Points from 1 to 10, one decimal. */
  double points(int tyre) {
    return points.get(tyre);
  }

  /** Standard competition ranking. */
  int place(int tyre) {
    return 1 + (int) points.stream().filter(other -> other > points.get(tyre)).count();
  }

  static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  static double sd(List<Double> values) {
    double mean = mean(values);
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares / (values.size() - 1));
  }
}
