package org.griplore.query.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.griplore.query.discipline.ComparisonScale;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.discipline.Network;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Likeness;
import org.griplore.query.network.Estimate;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.ranking.Places;
import org.griplore.query.statistics.Interval;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Unit;

/**
 * One discipline of a comparison table, from the network of all tests and that of the like ones.
 */
final class DisciplineColumn {
  private static final double SAME = 1e-9;

  private final Evidence evidence;
  private final String discipline;
  private final Network all;
  private final Network like;
  private final List<Integer> models;
  private final Footing footing;
  private final ComparisonScale measure;
  private final Unit unit;
  private final int levelTest;
  private final double level;
  private final int reference;
  private final boolean toMean;

  DisciplineColumn(
      Evidence evidence,
      String discipline,
      Network all,
      Likeness likeness,
      List<Integer> models,
      Reference to) {
    this.evidence = evidence;
    this.discipline = discipline;
    this.all = all;
    this.like =
        likeness.isOpen() ? all : all.within(entry -> likeness.takes(evidence, entry)).orElse(null);
    this.models = models;
    this.footing = new Footing(all, like, models, to.chosen());
    this.measure = all.measure();
    this.unit = !footing.hasMeasured() ? null : commonUnit();
    this.levelTest = unit == null ? -1 : levelTest();
    this.level = levelTest < 0 ? Double.NaN : level();
    this.toMean = to instanceof Reference.Mean;
    this.reference = toMean ? -1 : reference(to);
  }

  private int reference(Reference to) {
    int best = -1;
    for (int i = 0; i < models.size(); i++) {
      boolean wanted =
          to.chosen() != null
              ? models.get(i).equals(to.chosen())
              : best < 0 || footing.position(i) > footing.position(best);
      if (footing.basis(i) != FigureBasis.NONE && wanted) {
        best = i;
      }
    }
    return best;
  }

  /** Whether any tyre has evidence. */
  boolean hasEvidence() {
    return basis().anyMatch(basis -> basis != FigureBasis.NONE);
  }

  private java.util.stream.Stream<FigureBasis> basis() {
    return java.util.stream.IntStream.range(0, models.size()).mapToObj(footing::basis);
  }

  Network network() {
    return all;
  }

  /** The unit of the values; null when there are none. */
  String unit() {
    return unit == null || Double.isNaN(level) ? null : unit.symbol();
  }

  /**
   * The discipline's own unit where a tyre has a result in it in a like test; else the unit that
   * most of those results are in, by symbol among equals.
   */
  private Unit commonUnit() {
    Unit own = evidence.catalogue().get(discipline).unit();
    Map<String, Integer> counts = new TreeMap<>();
    DisciplineArms arms = like.arms();
    for (int i = 0; i < arms.size(); i++) {
      if (models.contains(arms.model()[i])) {
        counts.merge(unitOf(arms.result()[i]), 1, Integer::sum);
      }
    }
    String most = null;
    for (Map.Entry<String, Integer> count : counts.entrySet()) {
      most = most == null || count.getValue() > counts.get(most) ? count.getKey() : most;
    }
    return counts.containsKey(own.symbol()) ? own : Unit.ofSymbol(most).orElseThrow();
  }

  private String unitOf(int result) {
    return evidence.units().get(evidence.results().unit()[result]);
  }

  /**
   * The like test whose level the values stand on: the one with most of the measured tyres in the
   * unit, the latest of equals; -1 when there is none.
   */
  private int levelTest() {
    DisciplineArms arms = like.arms();
    TreeMap<Integer, Integer> held = new TreeMap<>();
    for (int i = 0; i < arms.size(); i++) {
      int row = models.indexOf(arms.model()[i]);
      if (row >= 0
          && footing.basis(row) == FigureBasis.MEASURED
          && like.testEffect(arms.test()[i]).isPresent()
          && unitOf(arms.result()[i]).equals(unit.symbol())) {
        held.merge(arms.test()[i], 1, Integer::sum);
      }
    }
    int most = -1;
    for (Map.Entry<Integer, Integer> test : held.entrySet()) {
      most = most < 0 || test.getValue() >= held.get(most) ? test.getKey() : most;
    }
    return most;
  }

  /** What a tyre at position zero would show in the test whose level the values stand on. */
  private double level() {
    DisciplineArms arms = like.arms();
    for (int i = 0; i < arms.size(); i++) {
      int row = models.indexOf(arms.model()[i]);
      if (arms.test()[i] == levelTest && row >= 0 && footing.basis(row) == FigureBasis.MEASURED) {
        return footing.level(row, like.testEffect(levelTest).orElseThrow());
      }
    }
    throw new IllegalStateException("no tyre of the table in test " + levelTest);
  }

  /** Key of the test whose level the values stand on; null when there are no values. */
  String levelKey() {
    return levelTest < 0 ? null : evidence.tests().get(levelTest).key();
  }

  /** The cells, one a tyre. */
  List<ComparedFigure> figures() {
    int[] places = places();
    PlaceIntervals open = PlaceIntervals.of(footing, models.size(), all.models());
    List<ComparedFigure> figures = new ArrayList<>();
    for (int i = 0; i < models.size(); i++) {
      figures.add(
          footing.basis(i) == FigureBasis.NONE
              ? ComparedFigure.none(discipline)
              : figure(i, places[i], open));
    }
    return figures;
  }

  private int[] places() {
    double[] positions = new double[models.size()];
    for (int i = 0; i < positions.length; i++) {
      positions[i] = Math.rint(footing.position(i) / SAME) * SAME;
    }
    int[] places = new int[positions.length];
    Places.rank(positions, positions.length, Direction.HIGH, places);
    return places;
  }

  /** The difference of a tyre to the reference on the discipline's scale; empty without either. */
  Optional<Estimate> difference(int row) {
    if (footing.basis(row) == FigureBasis.NONE || !toMean && reference < 0) {
      return Optional.empty();
    }
    double[] weights = new double[models.size()];
    if (toMean) {
      long held = basis().filter(basis -> basis != FigureBasis.NONE).count();
      for (int i = 0; i < weights.length; i++) {
        weights[i] = footing.basis(i) == FigureBasis.NONE ? 0 : -1.0 / held;
      }
    } else {
      weights[reference] -= 1;
    }
    weights[row] += 1;
    return Optional.of(footing.combination(weights));
  }

  private ComparedFigure figure(int row, int place, PlaceIntervals open) {
    Optional<Estimate> difference = difference(row);
    boolean itself = row == reference;
    Double value =
        Double.isNaN(level) ? null : (Double) measure.back(level + footing.position(row), unit);
    Double delta = difference.map(Estimate::value).orElse(null);
    Optional<Interval> interval =
        itself ? Optional.empty() : difference.flatMap(d -> d.interval(Difference.LEVEL));
    Optional<Interval> prediction = itself ? Optional.empty() : prediction(row, difference);
    List<Integer> held = held(row);
    boolean measured = footing.basis(row) == FigureBasis.MEASURED;
    return new ComparedFigureBuilder()
        .discipline(discipline)
        .value(value)
        .unit(value == null ? null : unit.symbol())
        .measured(value == null || !measured ? null : meanOf(held))
        .delta(measure.shown(delta))
        .deltaUnit(delta == null ? null : measure.shownUnit())
        .low(measure.shownLow(interval))
        .high(measure.shownHigh(interval))
        .predictionLow(measure.shownLow(prediction))
        .predictionHigh(measure.shownHigh(prediction))
        .place(place)
        .placeLow(open.low(row))
        .placeHigh(open.high(row))
        .tests(held.size())
        .basis(footing.basis(row).key())
        .to(delta == null || toMean ? null : evidence.models().get(models.get(reference)).name())
        .logDelta(measure.log(delta))
        .logSe(
            measure.isRatio() && !itself
                ? difference.map(DisciplineColumn::seOrNull).orElse(null)
                : null)
        .result(measured && held.size() == 1 ? (Long) evidence.results().id()[held.get(0)] : null)
        .build();
  }

  /** The mean of the results in the column's unit; null when none is. */
  private Double meanOf(List<Integer> results) {
    double mean =
        results.stream()
            .filter(result -> unitOf(result).equals(unit.symbol()))
            .mapToDouble(result -> evidence.results().value()[result])
            .average()
            .orElse(Double.NaN);
    return Double.isNaN(mean) ? null : (Double) mean;
  }

  private static Double seOrNull(Estimate estimate) {
    return estimate.se().isPresent() ? (Double) estimate.se().getAsDouble() : null;
  }

  /**
   * The interval in a new test: two arms of heterogeneity, and error where they are one lump, more.
   */
  private Optional<Interval> prediction(int row, Optional<Estimate> difference) {
    if (toMean
        || difference.isEmpty()
        || difference.get().se().isEmpty()
        || !(all.compare(models.get(row), models.get(reference))
            instanceof EstimatedComparison compared)
        || compared.predictionSd().isEmpty()) {
      return Optional.empty();
    }
    double more =
        square(compared.predictionSd().getAsDouble()) - square(widened(compared.estimate()));
    double sd = Math.sqrt(square(widened(difference.get())) + more);
    return new EstimatedComparison(difference.get(), OptionalDouble.of(sd), compared.predictionDf())
        .prediction(Difference.LEVEL);
  }

  private static double widened(Estimate estimate) {
    return estimate.scale().widening() * estimate.se().orElseThrow();
  }

  private static double square(double number) {
    return number * number;
  }

  /** The like tests that a tyre was measured in; none for any other. */
  List<Integer> likeTests(int row) {
    return footing.basis(row) != FigureBasis.MEASURED
        ? List.of()
        : held(row).stream()
            .map(result -> evidence.entries().test()[evidence.results().entry()[result]])
            .toList();
  }

  /** The results that say something of a tyre: in like tests when it is measured, else in all. */
  private List<Integer> held(int row) {
    Network network = footing.basis(row) == FigureBasis.MEASURED ? like : all;
    DisciplineArms arms = network.arms();
    List<Integer> held = new ArrayList<>();
    for (int i = 0; i < arms.size(); i++) {
      if (arms.model()[i] == models.get(row) && network.testEffect(arms.test()[i]).isPresent()) {
        held.add(arms.result()[i]);
      }
    }
    return held;
  }

  /** The spread of the effects of the models that all tests connect; NaN with fewer than two. */
  double spreadOfModels() {
    double[] effects =
        Arrays.stream(all.arms().model())
            .distinct()
            .sorted()
            .mapToObj(all::effect)
            .flatMap(Optional::stream)
            .mapToDouble(Estimate::value)
            .toArray();
    if (effects.length < 2) {
      return Double.NaN;
    }
    double sum = Arrays.stream(effects).map(DisciplineColumn::square).sum();
    double mean = Arrays.stream(effects).average().orElseThrow();
    return Math.sqrt(Math.max(0, (sum - effects.length * square(mean)) / (effects.length - 1)));
  }
}
