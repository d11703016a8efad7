package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import org.griplore.query.network.ModelStanding;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.statistics.RankIntervals;

/**
 * Intervals of the ranks of all models of one component, simultaneous at 95 %. Empty of intervals
 * where none can be given, or where the component is so large that they are not asked.
 */
public final class ComponentRanks {
  /** Ranks are drawn from one seed, so that an answer reads the same each time. */
  private static final long SEED = 20_240_501L;

  /** More models have no rank intervals: pairs grow with their square. */
  private static final int MOST = 3_000;

  private final Map<Integer, Integer> row = new HashMap<>();
  private final Optional<RankIntervals> intervals;

  private ComponentRanks(List<Integer> models, Optional<RankIntervals> intervals) {
    models.forEach(model -> row.put(model, row.size()));
    this.intervals = intervals;
  }

  static List<ComponentRanks> of(
      List<ModelStanding> standings, NetworkFit fit, IntUnaryOperator numberInFit) {
    Map<Integer, List<Integer>> components =
        standings.stream()
            .collect(
                Collectors.groupingBy(
                    ModelStanding::component,
                    java.util.TreeMap::new,
                    Collectors.mapping(ModelStanding::model, Collectors.toList())));
    List<ComponentRanks> ranks = new ArrayList<>();
    components
        .values()
        .forEach(
            models ->
                ranks.add(
                    new ComponentRanks(
                        models,
                        models.size() > MOST
                            ? Optional.empty()
                            : fit.ranks(
                                models.stream()
                                    .mapToInt(Integer::intValue)
                                    .map(numberInFit)
                                    .toArray(),
                                Difference.LEVEL,
                                new SplittableRandom(SEED)))));
    return ranks;
  }

  /** The best rank that a model of the component may have; null where it cannot be said. */
  public Integer low(int model) {
    return intervals.map(its -> its.low(row.get(model))).orElse(null);
  }

  /** The worst rank. */
  public Integer high(int model) {
    return intervals.map(its -> its.high(row.get(model))).orElse(null);
  }

  /** Number of models. */
  public int size() {
    return row.size();
  }

  /** The chance that the model with the largest effect is truly the best; null as {@link #low}. */
  public Double firstIsFirst() {
    return intervals.map(RankIntervals::firstIsFirst).orElse(null);
  }
}
