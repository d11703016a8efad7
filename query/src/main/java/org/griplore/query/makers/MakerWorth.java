package org.griplore.query.makers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.answer.Wording;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.discipline.ModelStep;
import org.griplore.query.discipline.Network;
import org.griplore.query.discipline.Networks;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.statistics.Interval;
import org.griplore.query.statistics.OffsetByGroup;

/**
 * What makers' figures have been worth in a discipline: over all steps from one generation to the
 * next that both a maker's report and others measured, by how much the maker's step was larger.
 *
 * <p>A maker's step is the mean of the differences inside the maker's tests that hold both
 * generations; the other is that of the network without makers' reports. Their error variances add
 * up: that of the network's step, and for k of the maker's tests 2(τ² + s²)/k with the
 * heterogeneity and errors that the network shows. Plus: the maker's figure is the better one.
 */
public final class MakerWorth {
  private final String discipline;
  private final ComparisonScale scale;
  private final OffsetByGroup offsets;
  private final Map<String, Integer> makers;

  private MakerWorth(
      String discipline,
      ComparisonScale scale,
      OffsetByGroup offsets,
      Map<String, Integer> makers) {
    this.discipline = discipline;
    this.scale = scale;
    this.offsets = offsets;
    this.makers = makers;
  }

  /** One step that both measured, on the discipline's scale. */
  private record Pair(String maker, double difference, double variance) {}

  /**
   * Works it out.
   *
   * @param filter what counts, whoever reports it
   * @return empty where fewer than two steps were measured by both, or nothing is known of errors
   */
  public static Optional<MakerWorth> of(
      Evidence evidence, String discipline, Filter filter, Networks networks) {
    if (!evidence.hasMakerReports()) {
      return Optional.empty();
    }
    Optional<Network> others =
        networks.of(evidence, discipline, filter.withoutMakers(), VarianceMethod.REML);
    DisciplineArms own = DisciplineArms.of(evidence, discipline, filter.onlyMakers());
    if (others.isEmpty() || own.size() == 0) {
      return Optional.empty();
    }
    Map<String, Integer> makers = new LinkedHashMap<>();
    List<Pair> pairs = pairs(evidence, others.get(), own);
    int[] group =
        pairs.stream()
            .mapToInt(pair -> makers.computeIfAbsent(pair.maker(), m -> makers.size()))
            .toArray();
    return OffsetByGroup.of(
            pairs.stream().mapToDouble(Pair::difference).toArray(),
            pairs.stream().mapToDouble(Pair::variance).toArray(),
            group)
        .map(
            offsets ->
                new MakerWorth(
                    discipline,
                    new ComparisonScale(evidence.catalogue().get(discipline)),
                    offsets,
                    makers));
  }

  private static List<Pair> pairs(Evidence evidence, Network others, DisciplineArms own) {
    Map<Integer, Map<Integer, Double>> byModel = new LinkedHashMap<>();
    for (int i = 0; i < own.size(); i++) {
      byModel
          .computeIfAbsent(own.model()[i], model -> new LinkedHashMap<>())
          .put(own.test()[i], own.y()[i]);
    }
    double single = others.resultVariance();
    List<Pair> pairs = new ArrayList<>();
    for (ModelStep step : ModelStep.all(evidence.models())) {
      Map<Integer, Double> older = byModel.getOrDefault(step.older(), Map.of());
      double sum = 0;
      int tests = 0;
      for (Map.Entry<Integer, Double> newer :
          byModel.getOrDefault(step.newer(), Map.of()).entrySet()) {
        Double before = older.get(newer.getKey());
        if (before != null) {
          sum += newer.getValue() - before;
          tests++;
        }
      }
      if (tests > 0
          && others.compare(step.newer(), step.older()) instanceof EstimatedComparison measured
          && measured.se().orElse(0) > 0
          && single > 0) {
        String maker = evidence.models().get(step.newer()).maker();
        double se = measured.se().getAsDouble();
        pairs.add(
            new Pair(
                maker == null ? "" : maker,
                sum / tests - measured.difference(),
                se * se + 2 * single / tests));
      }
    }
    return pairs;
  }

  /** Over all makers. */
  public Told overall() {
    return told(offsets.mean());
  }

  /** Of one maker, drawn towards all; that of all where it had no such step. */
  public Told of(String maker) {
    Integer group = makers.get(maker == null ? "" : maker);
    return told(group == null ? offsets.mean() : offsets.group(group));
  }

  /**
   * By how much makers' figures were better, in the unit that differences are shown in.
   *
   * @param better plus: the maker's step was larger
   * @param low lower end of its 95 % interval
   * @param high upper end
   * @param steps steps that both measured
   */
  public record Told(double better, double low, double high, int steps) {}

  private Told told(OffsetByGroup.Offset offset) {
    Interval interval = offset.interval(Difference.LEVEL);
    return new Told(
        scale.shown(offset.value()),
        scale.shown(interval.low()),
        scale.shown(interval.high()),
        offset.count());
  }

  /** All of it in a sentence. */
  public String words() {
    Told all = overall();
    return "Over %s of %s that both measured in %s, makers' figures were %s better%s."
        .formatted(
            Wording.counted(all.steps(), "step"),
            Wording.counted(makers.size(), "maker"),
            discipline,
            Wording.difference(all.better(), scale.shownUnit()),
            Wording.interval(all.low(), all.high(), 1));
  }
}
