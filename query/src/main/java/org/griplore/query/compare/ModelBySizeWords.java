package org.griplore.query.compare;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.griplore.query.answer.Wording;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.ModelBySize;
import org.griplore.store.tyre.TyreSize;

/**
 * How a contrast of two models reads over all sizes and in one size, where the archive can tell
 * what stays with a model in a size from what changes from test to test.
 */
final class ModelBySizeWords {
  /** Results times tests and models squared: beyond it the fit would take seconds. */
  private static final double MOST_WORK = 4e8;

  private ModelBySizeWords() {}

  /** The sentence; empty where the archive cannot tell or is very large. */
  static Optional<String> of(Evidence evidence, DisciplineArms arms, int first, int second) {
    int n = arms.size();
    Map<String, Integer> sizes = new HashMap<>();
    int[] size = new int[n];
    double[] known = new double[n];
    for (int i = 0; i < n; i++) {
      String text = evidence.sizeOf(arms.entry()[i]);
      String key =
          text == null
              ? "not stated " + arms.test()[i]
              : TyreSize.find(text).map(TyreSize::key).orElse(text);
      size[i] = sizes.computeIfAbsent(key, k -> sizes.size());
      known[i] = Double.isNaN(arms.variance()[i]) ? 0 : arms.variance()[i];
    }
    double columns = distinct(arms.test()) + distinct(arms.model());
    if (n * columns * columns > MOST_WORK) {
      return Optional.empty();
    }
    Optional<ModelBySize> fit = ModelBySize.of(arms.test(), arms.model(), size, arms.y(), known);
    if (fit.isEmpty()) {
      return Optional.empty();
    }
    ComparisonScale scale = arms.measure();
    Optional<String> all = fit.get().overAllSizes(first, second).map(c -> figure(c, scale));
    if (all.isEmpty()) {
      return Optional.empty();
    }
    StringBuilder words =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "%.0f %% of the heterogeneity stays with a model in a size (P of none %s): over all"
                    + " sizes the difference is %s",
                100 * fit.get().share(),
                fit.get().p() < 0.001
                    ? "below 0.001"
                    : String.format(Locale.ROOT, "%.3f", fit.get().p()),
                all.get()));
    common(arms, size, first, second)
        .ifPresent(
            in -> {
              String name =
                  sizes.entrySet().stream()
                      .filter(entry -> entry.getValue().equals(in))
                      .findFirst()
                      .orElseThrow()
                      .getKey();
              if (!name.startsWith("not stated")) {
                fit.get()
                    .inSize(first, second, in)
                    .ifPresent(
                        c ->
                            words
                                .append(", in ")
                                .append(name)
                                .append(" ")
                                .append(figure(c, scale)));
              }
            });
    return Optional.of(words.append(".").toString());
  }

  private static String figure(ModelBySize.Contrast contrast, ComparisonScale scale) {
    Interval interval = contrast.interval(Difference.LEVEL);
    return Wording.difference(scale.shown(contrast.value()), scale.shownUnit())
        + Wording.interval(scale.shown(interval.low()), scale.shown(interval.high()), 1);
  }

  private static long distinct(int[] numbers) {
    return java.util.Arrays.stream(numbers).distinct().count();
  }

  /** The size in which the two have most results, the first of equals. */
  private static Optional<Integer> common(DisciplineArms arms, int[] size, int first, int second) {
    Map<Integer, int[]> counts = new TreeMap<>();
    for (int i = 0; i < size.length; i++) {
      int model = arms.model()[i];
      if (model == first || model == second) {
        counts.computeIfAbsent(size[i], s -> new int[2])[model == first ? 0 : 1]++;
      }
    }
    return counts.entrySet().stream()
        .filter(entry -> Math.min(entry.getValue()[0], entry.getValue()[1]) > 0)
        .max(
            (a, b) ->
                Integer.compare(
                    a.getValue()[0] + a.getValue()[1], b.getValue()[0] + b.getValue()[1]))
        .map(Map.Entry::getKey);
  }
}
