package org.griplore.store.tyre;

/**
 * External rolling noise of car tyres: limit values by nominal section width, and the class
 * relative to the limit. A letter says nothing across widths: rank by dB.
 *
 * <p>Limits: Regulation (EC) 661/2009 annex II part C. The addition of 1 dB, the measuring
 * tolerance and the class edges: from memory, check the official text.
 */
public final class NoiseLabel {
  private NoiseLabel() {}

  /**
   * The limit of a C1 tyre, dB(A).
   *
   * @param widthMm nominal section width
   * @param snowOrExtraLoad snow, extra-load or reinforced: 1 dB more for any combination
   */
  public static int limitDb(double widthMm, boolean snowOrExtraLoad) {
    int limit;
    if (widthMm <= 185) {
      limit = 70;
    } else if (widthMm <= 245) {
      limit = 71;
    } else if (widthMm <= 275) {
      limit = 72;
    } else {
      limit = 74;
    }
    return limit + (snowOrExtraLoad ? 1 : 0);
  }

  /** The declared value of a measured level: 1 dB of tolerance off, then down to the whole dB. */
  public static int declaredDb(double measuredDb) {
    return (int) Math.floor(measuredDb - 1);
  }

  /** The class of a declared value: A 3 dB or more below the limit, B up to it, C above. */
  public static char classOf(int declaredDb, int limitDb) {
    if (declaredDb <= limitDb - 3) {
      return 'A';
    }
    return declaredDb <= limitDb ? 'B' : 'C';
  }
}
