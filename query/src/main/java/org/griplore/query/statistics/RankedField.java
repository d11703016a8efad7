package org.griplore.query.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order in which one test ranked its field, possibly with ties.
 *
 * @param models the models by number, each once
 * @param places their places, 1 the best; equal places are ties, gaps do not matter
 * @param weight how many such tests it stands for, above 0
 */
public record RankedField(int[] models, int[] places, double weight) {
  /**
   * Checks the field.
   *
   * @throws IllegalArgumentException when lengths differ, a model is named twice or the weight is
   *     not above 0
   */
  public RankedField {
    Checks.sameLength("models and places", models.length, places.length);
    Checks.positive("weight", new double[] {weight});
    if (Arrays.stream(models).distinct().count() != models.length) {
      throw new IllegalArgumentException("a model is ranked twice in one field");
    }
  }

  /** One test. */
  public RankedField(int[] models, int[] places) {
    this(models, places, 1);
  }

  /** Models of equal place together, best first. */
  List<int[]> groups() {
    return Arrays.stream(places)
        .distinct()
        .sorted()
        .mapToObj(
            place ->
                IntStream.range(0, models.length)
                    .filter(i -> places[i] == place)
                    .map(i -> models[i])
                    .toArray())
        .toList();
  }
}
