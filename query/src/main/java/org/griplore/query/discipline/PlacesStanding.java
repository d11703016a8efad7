package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Ranking;
import org.griplore.query.statistics.JointErrors;
import org.griplore.query.statistics.PlackettLuce;
import org.griplore.query.statistics.PlackettLuceFit;
import org.griplore.query.statistics.RankIntervals;
import org.griplore.query.statistics.RankedField;
import org.griplore.query.statistics.Tails;

/**
 * How models stand by their places alone, ties among them, each test a field of its own
 * (Plackett-Luce; see {@link PlackettLuce}). Never mixed with the standing by values: a place says
 * who was ahead and not by how much.
 *
 * @param rows the models, component by component, the best first
 * @param tests tests with at least two places
 * @param placesAlone tests among them that give no comparable values
 * @param separated components in which some models never came behind others, so that a ghost of
 *     little weight had to bound their distance
 * @param agreement how far the tests agree on the order of models that all of them placed; null
 *     where no two tests placed the same three
 * @param entries positions of the entries whose places went in
 * @param excluded what was left out
 */
public record PlacesStanding(
    List<Row> rows,
    int tests,
    int placesAlone,
    int separated,
    TestsAgreement agreement,
    List<Integer> entries,
    Exclusions excluded) {
  /** Any will do; the same gives the same ranks. */
  private static final long SEED = 1975;

  /**
   * One model.
   *
   * @param model position in the evidence
   * @param effect log worth less the mean of the component
   * @param se its standard error
   * @param score mean certainty of being stronger than another model of the component (P-score)
   * @param tests fields it stood in
   * @param rankLow the best rank it may have in its component, in a 95 % interval that holds for
   *     all of them at once
   * @param rankHigh the worst
   */
  public record Row(
      int model,
      int component,
      double effect,
      double se,
      double score,
      int tests,
      int rankLow,
      int rankHigh) {}

  /**
   * Fits the places of a discipline.
   *
   * @throws IllegalArgumentException when ties alone leave a parameter without a finite estimate
   */
  public static PlacesStanding of(Evidence evidence, String discipline, Filter filter) {
    Exclusions excluded = new Exclusions();
    Map<Integer, TreeMap<Integer, Integer>> fields = new TreeMap<>();
    int position = evidence.discipline(discipline);
    Set<Integer> valued = new HashSet<>();
    List<Integer> entries = new ArrayList<>();
    if (position >= 0) {
      gather(evidence, evidence.ranking(position), filter, fields, entries, excluded);
      if (!discipline.equals("overall")) {
        Arrays.stream(DisciplineArms.of(evidence, discipline, filter).test()).forEach(valued::add);
      }
    }
    int alone = (int) fields.values().stream().filter(f -> f.size() < 2).count();
    if (alone > 0) {
      excluded.add("tests with one such place only", alone);
      fields.values().removeIf(field -> field.size() < 2);
    }
    if (fields.isEmpty()) {
      return new PlacesStanding(List.of(), 0, 0, 0, null, List.of(), excluded);
    }
    int[] models =
        fields.values().stream()
            .flatMap(field -> field.keySet().stream())
            .mapToInt(Integer::intValue)
            .sorted()
            .distinct()
            .toArray();
    List<RankedField> ranked =
        fields.values().stream().map(field -> ranked(field, models)).toList();
    PlackettLuceFit fit = PlackettLuce.fit(models.length, ranked, PlackettLuce.USUAL_GHOST);
    int separated = 0;
    for (int component = 0; component < fit.components(); component++) {
      separated += fit.separated(component) ? 1 : 0;
    }
    int placesAlone = (int) fields.keySet().stream().filter(t -> !valued.contains(t)).count();
    return new PlacesStanding(
        rows(fit, models, ranked),
        ranked.size(),
        placesAlone,
        separated,
        TestsAgreement.of(fields.values()).orElse(null),
        entries,
        excluded);
  }

  /** How many tests rank at least two models and give no comparable values. */
  public static int placesAlone(Evidence evidence, String discipline, Filter filter) {
    int position = evidence.discipline(discipline);
    if (position < 0) {
      return 0;
    }
    Map<Integer, TreeMap<Integer, Integer>> fields = new TreeMap<>();
    gather(
        evidence, evidence.ranking(position), filter, fields, new ArrayList<>(), new Exclusions());
    Arrays.stream(DisciplineArms.of(evidence, discipline, filter).test()).forEach(fields::remove);
    return (int) fields.values().stream().filter(field -> field.size() > 1).count();
  }

  private static void gather(
      Evidence evidence,
      Ranking ranking,
      Filter filter,
      Map<Integer, TreeMap<Integer, Integer>> fields,
      List<Integer> entries,
      Exclusions excluded) {
    for (int row = 0; row < ranking.count(); row++) {
      int entry = evidence.results().entry()[ranking.result(row)];
      var reason = filter.reasonAgainstResult(ranking.result(row));
      if (reason.isPresent()) {
        excluded.add(reason.get());
      } else if (ranking.place(row) == 0) {
        excluded.add("results without a place");
      } else {
        int model = evidence.entries().model()[entry];
        Integer before =
            fields
                .computeIfAbsent(evidence.entries().test()[entry], test -> new TreeMap<>())
                .putIfAbsent(model, ranking.place(row));
        if (before != null) {
          excluded.add("a second place of a model in a test");
        } else {
          entries.add(entry);
        }
      }
    }
  }

  private static RankedField ranked(TreeMap<Integer, Integer> field, int[] models) {
    return new RankedField(
        field.keySet().stream().mapToInt(m -> Arrays.binarySearch(models, m)).toArray(),
        field.values().stream().mapToInt(Integer::intValue).toArray());
  }

  private static List<Row> rows(PlackettLuceFit fit, int[] models, List<RankedField> fields) {
    Map<Integer, Integer> tests = new HashMap<>();
    fields.forEach(
        field -> Arrays.stream(field.models()).forEach(m -> tests.merge(m, 1, Integer::sum)));
    double[] scores = scores(fit, models.length);
    int[][] ranks = ranks(fit, models.length);
    List<Row> rows = new ArrayList<>();
    for (int m = 0; m < models.length; m++) {
      rows.add(
          new Row(
              models[m],
              fit.component(m),
              fit.effect(m),
              fit.se(m),
              scores[m],
              tests.get(m),
              ranks[0][m],
              ranks[1][m]));
    }
    rows.sort(
        Comparator.comparingInt(Row::component)
            .thenComparing(row -> -row.effect())
            .thenComparingInt(Row::model));
    return List.copyOf(rows);
  }

  /** The best and the worst rank of each model, component by component. */
  private static int[][] ranks(PlackettLuceFit fit, int models) {
    int[][] ranks = new int[2][models];
    for (int component = 0; component < fit.components(); component++) {
      int its = component;
      int[] of = IntStream.range(0, models).filter(m -> fit.component(m) == its).toArray();
      RankIntervals.PairSpread spread =
          (i, j) -> i == j ? 0 : fit.contrast(of[i], of[j]).orElseThrow().se();
      RankIntervals intervals =
          RankIntervals.of(
              Arrays.stream(of).mapToDouble(fit::effect).toArray(),
              spread,
              JointErrors.of(of.length, spread),
              Double.POSITIVE_INFINITY,
              Difference.LEVEL,
              new SplittableRandom(SEED));
      for (int i = 0; i < of.length; i++) {
        ranks[0][of[i]] = intervals.low(i);
        ranks[1][of[i]] = intervals.high(i);
      }
    }
    return ranks;
  }

  private static double[] scores(PlackettLuceFit fit, int models) {
    double[] sums = new double[models];
    int[] others = new int[models];
    for (int i = 0; i < models; i++) {
      for (int j = 0; j < i; j++) {
        var contrast = fit.contrast(i, j);
        if (contrast.isPresent()) {
          double better =
              contrast.get().se() > 0
                  ? Tails.normalAbove(-contrast.get().difference() / contrast.get().se())
                  : 0.5;
          sums[i] += better;
          sums[j] += 1 - better;
          others[i]++;
          others[j]++;
        }
      }
    }
    for (int i = 0; i < models; i++) {
      sums[i] /= others[i];
    }
    return sums;
  }
}
