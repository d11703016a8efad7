package org.griplore.ingest.reduce.run;

import java.util.List;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/** Turns a figure that runs are averaged in into the discipline's unit. */
public final class ResultUnit {
  private final RunMeasure measure;
  private final Unit wanted;
  private final Window window;

  /**
   * @param window nominal speeds; null where none apply, and decelerations then stay decelerations
   */
  public ResultUnit(RunMeasure measure, Unit wanted, Window window) {
    this.measure = measure;
    this.wanted = wanted;
    this.window = window;
  }

  public Window window() {
    return window;
  }

  /** Unit of the averaged figure; inverse distances have none of the vocabulary's. */
  public Unit figureUnit() {
    return measure.figureUnit();
  }

  /** The result's unit: the discipline's where the figure can be told in it. */
  public Unit unit() {
    return convertsToDistance() || natural().convertsTo(wanted) ? wanted : natural();
  }

  private Unit natural() {
    return measure.unit();
  }

  private boolean convertsToDistance() {
    return measure.kind() == RunMeasure.Kind.DECELERATION
        && window != null
        && Unit.METRE.convertsTo(wanted);
  }

  private boolean inverts() {
    return measure.kind() == RunMeasure.Kind.INVERSE_DISTANCE || convertsToDistance();
  }

  /** The figure in the result's unit. */
  public double of(double figure) {
    if (convertsToDistance()) {
      return Unit.METRE.convert(SpeedCorrection.distance(window, figure), unit());
    }
    double plain = measure.kind() == RunMeasure.Kind.INVERSE_DISTANCE ? 1 / figure : figure;
    return natural().convert(plain, unit());
  }

  /** The figure in the result's unit, with the step that leads there where one is needed. */
  public double add(double figure, List<Step> steps) {
    double value = of(figure);
    if (inverts() || unit() != natural()) {
      String rule =
          convertsToDistance()
              ? "distance from " + window.words() + " at this mean deceleration"
              : inverts() ? "distance, the inverse" : "in " + unit().symbol();
      steps.add(Step.of(rule, figure, figureUnit(), value, unit()));
    }
    return value;
  }

  /** A standard deviation of the figure in the result's unit (delta method). */
  public Double spread(Double deviation, double mean, double corrected) {
    if (deviation == null) {
      return null;
    }
    return error(measure.byRatio() ? deviation / mean : deviation, corrected);
  }

  /** A deviation on the effect's scale in the result's unit. */
  public double error(double onEffectScale, double corrected) {
    if (measure.byRatio()) {
      return onEffectScale * Math.abs(corrected);
    }
    return Math.abs(natural().convert(onEffectScale, unit()) - natural().convert(0, unit()));
  }
}
