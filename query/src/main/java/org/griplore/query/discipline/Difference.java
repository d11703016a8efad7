package org.griplore.query.discipline;

import java.util.Optional;
import org.griplore.query.answer.Missing;
import org.griplore.query.network.Estimate;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.network.EvidenceSplit;
import org.griplore.query.statistics.Interval;

/**
 * A difference of two models as answers show it, plus: the first is better. Figures are null where
 * they could not be estimated.
 *
 * @param difference in {@code unit}
 * @param se standard error, in {@code unit}
 * @param low lower end of the 95 % interval for another car, size and day; null where nothing tells
 *     how far tests differ
 * @param high upper end
 * @param runsLow lower end of the 95 % interval for the very sets, cars and days tested, by the
 *     scatter of runs alone; null where no spread of runs is known
 * @param runsHigh upper end
 * @param predictionLow lower end of the 95 % interval for the difference in a new test
 * @param predictionHigh upper end
 * @param directTests tests that held both
 * @param direct the difference inside those tests
 * @param indirect the difference by all other chains of tests
 * @param inconsistencyP probability of so large a inconsistency of the two if there were none
 * @param logDifference natural log, for ratio disciplines
 * @param logSe its standard error
 */
public record Difference(
    String unit,
    double difference,
    Double se,
    Double low,
    Double high,
    Double runsLow,
    Double runsHigh,
    Double predictionLow,
    Double predictionHigh,
    int directTests,
    Double direct,
    Double indirect,
    Double inconsistencyP,
    Double logDifference,
    Double logSe) {
  /** The level of the intervals that answers show. */
  public static final double LEVEL = 0.95;

  /** With more results the interval of runs alone is not made: it takes a sum over all of them. */
  private static final int MOST_ARMS = 50_000;

  /** The difference of two models; empty when nothing connects them. */
  public static Optional<Difference> of(Network network, int first, int second) {
    Optional<EvidenceSplit> told = network.evidence(first, second);
    if (told.isEmpty() || !(told.get().network() instanceof EstimatedComparison compared)) {
      return Optional.empty();
    }
    EvidenceSplit evidence = told.get();
    ComparisonScale measure = network.measure();
    double difference = compared.difference();
    Double se = Missing.orNull(compared.se());
    Optional<Interval> interval = compared.interval(LEVEL);
    Optional<Interval> prediction = compared.prediction(LEVEL);
    Optional<Interval> runs =
        network.arms().size() > MOST_ARMS
            ? Optional.empty()
            : network.byRunsAlone(first, second).flatMap(r -> r.interval(LEVEL));
    return Optional.of(
        new Difference(
            measure.shownUnit(),
            measure.shown(difference),
            measure.shownSe(difference, se),
            measure.shownLow(interval),
            measure.shownHigh(interval),
            measure.shownLow(runs),
            measure.shownHigh(runs),
            measure.shownLow(prediction),
            measure.shownHigh(prediction),
            evidence.directTests(),
            measure.shown(evidence.direct().map(Estimate::value).orElse(null)),
            measure.shown(
                evidence
                    .indirect()
                    .filter(estimate -> evidence.chained())
                    .map(Estimate::value)
                    .orElse(null)),
            evidence
                .inconsistency()
                .filter(estimate -> evidence.chained())
                .map(Estimate::p)
                .filter(java.util.OptionalDouble::isPresent)
                .map(java.util.OptionalDouble::getAsDouble)
                .orElse(null),
            measure.log(difference),
            measure.isRatio() ? se : null));
  }
}
