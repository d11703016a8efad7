package org.griplore.query.browse;

import java.util.List;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.label.LabelClaim;

/** What the question {@code test} tells of the test besides its table; each only where stated. */
public final class TestFacts {
  /** The date as exactly as known, ISO 8601. */
  public static final WholeFigure<String> DATE =
      new WholeFigure<>("date", "The date as exactly as known.");

  /** The report's title. */
  public static final WholeFigure<String> TITLE = new WholeFigure<>("title", "The report's title.");

  /** Who published it. */
  public static final WholeFigure<String> PUBLICATION =
      new WholeFigure<>("publication", "Who published the report.");

  /** Whose test it is. */
  public static final WholeFigure<String> KIND =
      new WholeFigure<>("kind", "Whose test it is: own, independent or maker.");

  /** The size that was tested. */
  public static final WholeFigure<String> SIZE =
      new WholeFigure<>("size", "The size that was tested.");

  /** The season class. */
  public static final WholeFigure<String> SEASON =
      new WholeFigure<>("season", "The season class of the tyres.");

  /** The car. */
  public static final WholeFigure<String> VEHICLE =
      new WholeFigure<>("vehicle", "The car it was driven with.");

  /** The car's mass in kg. */
  public static final WholeFigure<Double> VEHICLE_MASS =
      new WholeFigure<>("vehicleMassKg", "The car's mass in kg.");

  /** The proving ground. */
  public static final WholeFigure<String> VENUE = new WholeFigure<>("venue", "The proving ground.");

  /** The surface's temperature in degrees Celsius. */
  public static final WholeFigure<Double> SURFACE =
      new WholeFigure<>("surfaceC", "The surface's temperature in degrees Celsius.");

  /** The air's temperature in degrees Celsius. */
  public static final WholeFigure<Double> AIR =
      new WholeFigure<>("airC", "The air's temperature in degrees Celsius.");

  /** What the tyre label would say of its figures. */
  public static final WholeFigure<List<LabelClaim>> LABELS =
      new WholeFigure<>("labels", "What the tyre label's classes are beside the figures.");

  /** All of them. */
  public static final List<WholeFigure<?>> ALL =
      List.of(
          DATE,
          TITLE,
          PUBLICATION,
          KIND,
          SIZE,
          SEASON,
          VEHICLE,
          VEHICLE_MASS,
          VENUE,
          SURFACE,
          AIR,
          LABELS);

  private TestFacts() {}
}
