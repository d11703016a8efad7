package org.griplore.store.scenario;

import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Scale;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.Unit;

/**
 * What is true of one discipline. Effects stand on the scale of comparison and are positive when
 * better: natural-log ratios for ratio disciplines, dB or points for the others.
 *
 * @param key the catalogue key
 * @param unit the canonical unit of values
 * @param scale how results are compared
 * @param better which way is better
 * @param typical the value of an average summer model of an average test, in the unit
 * @param lineSd standard deviation of line levels
 * @param stepMean mean gain from one generation to the next
 * @param stepSd standard deviation of that gain between steps
 * @param heterogeneitySd heterogeneity of a model with a test (its car, size and day)
 * @param repeatability standard deviation of a single run
 * @param testSd standard deviation of the level of a test
 * @param runs runs behind a result; 0 where a result has no runs (a price)
 * @param digits decimals that a tester prints; negative for whole tens and hundreds
 * @param allSeason true offset of all-season tyres against summer tyres at 15 degrees Celsius
 * @param winter true offset of winter tyres against summer tyres at 15 degrees Celsius
 * @param allSeasonSlope change of the all-season offset per degree above 15
 * @param winterSlope change of the winter offset per degree above 15
 */
public record DisciplineTruth(
    String key,
    Unit unit,
    Scale scale,
    Direction better,
    double typical,
    double lineSd,
    double stepMean,
    double stepSd,
    double heterogeneitySd,
    double repeatability,
    double testSd,
    int runs,
    int digits,
    double allSeason,
    double winter,
    double allSeasonSlope,
    double winterSlope) {

  /** The temperature at which the stated offsets between seasons hold, degrees Celsius. */
  public static final double REFERENCE_C = 15;

  /** The true offset of a season class against summer tyres, at a surface temperature. */
  public double seasonOffset(SeasonClass season, double surfaceC) {
    double above = surfaceC - REFERENCE_C;
    return switch (season) {
      case SUMMER -> 0;
      case ALL_SEASON -> allSeason + allSeasonSlope * above;
      case WINTER -> winter + winterSlope * above;
    };
  }

  /** The value in the unit for an effect (positive better) in a test of this level. */
  public double value(double level, double effect) {
    double signed = level + better.sign() * effect;
    return switch (scale) {
      case RATIO -> typical * StrictMath.exp(signed);
      case LEVEL -> typical + signed;
      case POINTS -> Math.min(10, Math.max(1, typical + signed));
    };
  }

  /** The effect (positive better) that a value shows against the typical value. */
  public double shown(double value) {
    double difference = scale == Scale.RATIO ? StrictMath.log(value / typical) : value - typical;
    return better.sign() * difference;
  }

  /** The same truth with offsets between seasons that no temperature changes. */
  DisciplineTruth withoutSlopes() {
    return new DisciplineTruth(
        key,
        unit,
        scale,
        better,
        typical,
        lineSd,
        stepMean,
        stepSd,
        heterogeneitySd,
        repeatability,
        testSd,
        runs,
        digits,
        allSeason,
        winter,
        0,
        0);
  }
}
