package org.griplore.store.vocabulary;

import java.util.Map;

/**
 * What a report says of its test as a whole. Every part may be null: not stated.
 *
 * @param title the report's title
 * @param date when the test was run, as exactly as stated
 * @param kind who stands behind the report
 * @param publication who published it: a publication's, a maker's or the tester's own name
 * @param size the tyre size tested, as {@code TyreSize} writes it
 * @param season the season class tested
 * @param vehicle the vehicle in words
 * @param vehicleMassKg its mass as tested, kg
 * @param venue the proving ground
 * @param surfaceC temperature of the surface, degrees Celsius
 * @param airC temperature of the air, degrees Celsius
 * @param cells where each stated part stands, by the part's name ({@code date}, {@code size} ...)
 */
public record Details(
    String title,
    TestDate date,
    SourceKind kind,
    String publication,
    String size,
    SeasonClass season,
    String vehicle,
    Double vehicleMassKg,
    String venue,
    Double surfaceC,
    Double airC,
    Map<String, Cell> cells) {
  /** Details of which nothing is stated. */
  public static final Details NONE =
      new Details(null, null, null, null, null, null, null, null, null, null, null, Map.of());

  /** Keeps the map from changing. */
  public Details {
    cells = Map.copyOf(cells);
  }

  /** The same details without where they stand. */
  public Details withoutCells() {
    return new Details(
        title,
        date,
        kind,
        publication,
        size,
        season,
        vehicle,
        vehicleMassKg,
        venue,
        surfaceC,
        airC,
        Map.of());
  }

  /** These details, with what is not stated here taken from another; cells are not kept. */
  public Details orElse(Details other) {
    return new Details(
        title == null ? other.title : title,
        date == null ? other.date : date,
        kind == null ? other.kind : kind,
        publication == null ? other.publication : publication,
        size == null ? other.size : size,
        season == null ? other.season : season,
        vehicle == null ? other.vehicle : vehicle,
        vehicleMassKg == null ? other.vehicleMassKg : vehicleMassKg,
        venue == null ? other.venue : venue,
        surfaceC == null ? other.surfaceC : surfaceC,
        airC == null ? other.airC : airC,
        Map.of());
  }
}
