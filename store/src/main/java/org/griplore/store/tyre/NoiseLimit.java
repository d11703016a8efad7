package org.griplore.store.tyre;

import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Limit values LV of external rolling noise in dB(A), Regulation (EC) 661/2009, annex II part C.
 * They hold for the declared value (see {@link NoiseClass#declared}).
 */
public final class NoiseLimit {
  /** Use of a C2 or C3 tyre. */
  public enum Use {
    NORMAL,
    TRACTION
  }

  private NoiseLimit() {}

  /**
   * The limit of a car tyre by nominal section width.
   *
   * @param widthMm nominal section width, mm
   * @param snowOrExtraLoad whether it is a snow, extra-load or reinforced tyre or several of these:
   *     1 dB more (from memory, check the official text)
   */
  public static int car(int widthMm, boolean snowOrExtraLoad) {
    int limit;
    if (requireWidth(widthMm) <= 185) {
      limit = 70;
    } else if (widthMm <= 245) {
      limit = 71;
    } else {
      limit = widthMm <= 275 ? 72 : 74;
    }
    return snowOrExtraLoad ? limit + 1 : limit;
  }

  /** The subclass of a car tyre by nominal section width in mm: C1A to C1E. */
  public static String carSubclass(int widthMm) {
    requireWidth(widthMm);
    if (widthMm <= 215) {
      return widthMm <= 185 ? "C1A" : "C1B";
    }
    if (widthMm <= 245) {
      return "C1C";
    }
    return widthMm <= 275 ? "C1D" : "C1E";
  }

  /**
   * The older limit of a car tyre, stage 1: UN Regulation No. 117, section 6, of 2006.
   *
   * @param widthMm nominal section width, mm
   */
  public static int carStage1(int widthMm) {
    if (requireWidth(widthMm) <= 145) {
      return 72;
    }
    if (widthMm <= 165) {
      return 73;
    }
    if (widthMm <= 185) {
      return 74;
    }
    return widthMm <= 215 ? 75 : 76;
  }

  /**
   * The limit of a van or truck tyre without the additions for snow and special use.
   *
   * @throws Refusal for C1, whose limit depends on the width
   */
  public static int commercial(TyreClass tyreClass, Use use) {
    return switch (tyreClass) {
      case C1 ->
          throw new Refusal(
              "The noise limit of a C1 tyre goes by its width; found no width",
              new Problem("tyre class", "C1", "C2 or C3"));
      case C2 -> use == Use.NORMAL ? 72 : 73;
      case C3 -> use == Use.NORMAL ? 73 : 75;
    };
  }

  private static int requireWidth(int widthMm) {
    if (widthMm < 100 || widthMm > 455) {
      throw new Refusal(
          "A section width is 100 to 455 mm; found " + widthMm,
          new Problem("section width", Integer.toString(widthMm), "100 to 455 mm"));
    }
    return widthMm;
  }
}
