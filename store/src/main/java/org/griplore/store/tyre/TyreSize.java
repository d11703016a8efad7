package org.griplore.store.tyre;

import java.util.Optional;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A tyre size designation, metric ({@code 205/55 R16 91V}) or flotation ({@code 31x10.5 R15}).
 *
 * @param prefix {@code P}, {@code LT}, {@code T}, {@code HL} or empty
 * @param widthMm nominal section width, mm
 * @param aspectRatio nominal aspect ratio, per cent; null when not written, and for flotation sizes
 * @param structure {@code R}, {@code ZR}, {@code RF}, {@code ZRF}, {@code D} or {@code B}
 * @param rimInches rim diameter code
 * @param commercial whether a C follows the rim diameter
 * @param loadIndex null when not written
 * @param dualLoadIndex the second load index, for dual fitment; null when not written
 * @param speedSymbol null when not written
 * @param aboveSpeed whether the service description stands in brackets, as in {@code (98Y)}: faster
 *     than the symbol (from memory, check the official text)
 * @param extraLoad XL, RF, REINF or EXTRA LOAD: one and the same
 * @param flotationDiameterInches outside diameter of a flotation size; null for metric sizes
 */
public record TyreSize(
    String prefix,
    double widthMm,
    Integer aspectRatio,
    String structure,
    double rimInches,
    boolean commercial,
    Integer loadIndex,
    Integer dualLoadIndex,
    SpeedSymbol speedSymbol,
    boolean aboveSpeed,
    boolean extraLoad,
    Double flotationDiameterInches) {
  private static final double INCH_MM = 25.4;

  /**
   * Reads a designation that stands alone.
   *
   * @throws Refusal when it is none
   */
  public static TyreSize parse(String text) {
    return SizeReader.whole(text)
        .orElseThrow(
            () ->
                new Refusal(
                    "\"" + text + "\" is no tyre size; expected one like 205/55 R16 91V.",
                    new Problem("size", text, "like 205/55 R16 91V")));
  }

  /** The first designation in a text; empty when there is none. */
  public static Optional<TyreSize> find(String text) {
    return SizeReader.first(text);
  }

  /** The size without its service description, for comparing: {@code 205/55 R16}. */
  public String key() {
    StringBuilder key = new StringBuilder(prefix);
    if (flotationDiameterInches != null) {
      key.append(plain(flotationDiameterInches)).append('x').append(plain(widthMm / INCH_MM));
    } else {
      key.append(plain(widthMm));
      if (aspectRatio != null) {
        key.append('/').append(aspectRatio);
      }
    }
    String radial = structure.endsWith("R") || structure.endsWith("RF") ? "R" : structure;
    return key.append(' ')
        .append(radial)
        .append(plain(rimInches))
        .append(commercial ? "C" : "")
        .toString();
  }

  /** The designation in one spelling; reading it again gives the same size. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(key());
    int structureAt = text.indexOf(" ") + 1;
    if (structure.length() > 1) {
      text.replace(structureAt, structureAt + 1, structure);
    }
    if (loadIndex != null || speedSymbol != null) {
      String description =
          (loadIndex == null ? "" : loadIndex)
              + (dualLoadIndex == null ? "" : "/" + dualLoadIndex)
              + (speedSymbol == null ? "" : speedSymbol.name());
      text.append(' ').append(aboveSpeed ? "(" + description + ")" : description);
    }
    return text.append(extraLoad ? " XL" : "").toString();
  }

  /** Section height, mm: width times aspect ratio (flotation: half of what the rim leaves). */
  public double sectionHeightMm() {
    if (flotationDiameterInches != null) {
      return (flotationDiameterInches - rimInches) / 2 * INCH_MM;
    }
    if (aspectRatio == null) {
      throw new IllegalStateException("the size states no aspect ratio: " + this);
    }
    return widthMm * aspectRatio / 100;
  }

  /** Outside diameter, mm: rim diameter of exactly 25.4 mm an inch and two section heights. */
  public double outsideDiameterMm() {
    return rimInches * INCH_MM + 2 * sectionHeightMm();
  }

  /** Circumference of the unloaded tyre, mm; under load it rolls about 3 % shorter. */
  public double circumferenceMm() {
    return Math.PI * outsideDiameterMm();
  }

  /** Turns a kilometre, unloaded. */
  public double turnsPerKm() {
    return 1e6 / circumferenceMm();
  }

  /**
   * Section width on a measuring rim, rounded to a mm: S = S1 + 0.4 (A - A1), UN Regulation No. 30,
   * 6.1.1.1.
   *
   * @param measuringRimInches width of the measuring rim
   * @param rimToSection A1/S1, the theoretical rim's width to the section width, from the standard
   */
  public double sectionWidthMm(double measuringRimInches, double rimToSection) {
    double a = measuringRimInches * INCH_MM;
    return Math.rint(widthMm + 0.4 * (a - rimToSection * widthMm));
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? String.valueOf((long) number)
        : String.valueOf(Math.round(number * 100) / 100.0);
  }
}
