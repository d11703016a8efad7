package org.griplore.store.tyre;

import java.util.Map;
import java.util.Optional;

/**
 * The unloaded dimensions that a size stands for. Real rolling circumference under load is smaller,
 * by about 3 % (from memory, check the official text).
 *
 * @param sectionHeightMm section height H, mm
 * @param rimDiameterMm nominal rim diameter d, mm
 * @param outsideDiameterMm outside diameter D = d + 2 H, mm
 */
public record SizeGeometry(double sectionHeightMm, double rimDiameterMm, double outsideDiameterMm) {

  /**
   * Tabulated nominal rim diameters in mm by code: UN Regulation No. 30, paragraph 6.1.2; from
   * memory, check the official text.
   */
  private static final Map<Integer, Integer> TABULATED =
      Map.of(
          13, 330, 14, 356, 15, 381, 16, 406, 17, 432, 18, 457, 19, 483, 20, 508, 21, 533, 22, 559);

  /** K of the section width formula: UN Regulation No. 30, paragraph 6.1.1.1. */
  private static final double K = 0.4;

  /**
   * Dimensions with d = 25.4 x rim code: H = S1 x Ra / 100, D = d + 2 H. Empty for a size without
   * aspect ratio.
   */
  public static Optional<SizeGeometry> exact(TyreSize size) {
    double rim = TyreSize.MM_PER_INCH * size.rimCode();
    if (size.section() instanceof Section.Flotation flotation) {
      double outside = flotation.diameterIn() * TyreSize.MM_PER_INCH;
      return Optional.of(new SizeGeometry((outside - rim) / 2, rim, outside));
    }
    Section.Metric metric = (Section.Metric) size.section();
    return metric.aspect().isEmpty()
        ? Optional.empty()
        : Optional.of(of(metric.widthMm() * metric.aspect().getAsInt() / 100.0, rim));
  }

  /**
   * Dimensions as UN Regulation No. 30 reckons them: d from its table (from memory, check the
   * official text), H rounded to the whole mm. Empty for rim codes outside 13 to 22, for half
   * codes, flotation sizes and sizes without aspect ratio.
   */
  public static Optional<SizeGeometry> tabulated(TyreSize size) {
    Integer rim =
        size.rimCode() == Math.rint(size.rimCode()) ? TABULATED.get((int) size.rimCode()) : null;
    return rim == null || size.section() instanceof Section.Flotation
        ? Optional.empty()
        : exact(size).map(exact -> of(Math.round(exact.sectionHeightMm()), rim));
  }

  private static SizeGeometry of(double height, double rim) {
    return new SizeGeometry(height, rim, rim + 2 * height);
  }

  /** Unloaded circumference in mm. */
  public double circumferenceMm() {
    return Math.PI * outsideDiameterMm;
  }

  /** Unloaded revolutions a kilometre. */
  public double revolutionsPerKm() {
    return 1e6 / circumferenceMm();
  }

  /**
   * Section width on a measuring rim in mm, rounded to the whole mm: S = S1 + K (A - A1), K = 0.4,
   * A the measuring rim's width, A1 = x S1 the theoretical rim's (UN Regulation No. 30, paragraph
   * 6.1.1.1).
   *
   * @param nominalWidthMm S1, mm
   * @param measuringRimCode width code of the measuring rim, inches
   * @param theoreticalRatio x, from the tyre's standard or manufacturer
   */
  public static long sectionWidthMm(
      int nominalWidthMm, double measuringRimCode, double theoreticalRatio) {
    double measuring = measuringRimCode * TyreSize.MM_PER_INCH;
    return Math.round(nominalWidthMm + K * (measuring - theoreticalRatio * nominalWidthMm));
  }
}
