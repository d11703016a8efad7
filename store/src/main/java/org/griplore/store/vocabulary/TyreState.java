package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * The state in which a tyre was tested. Every part but {@code wear} may be null: not stated.
 *
 * @param wear new or worn
 * @param treadMm depth of the tread, mm
 * @param mileageKm distance it had run, km
 * @param ageYears its age, years
 */
public record TyreState(Wear wear, Double treadMm, Double mileageKm, Double ageYears) {
  /** A new tyre, of which nothing more is stated. */
  public static final TyreState NEW = new TyreState(Wear.NEW, null, null, null);

  /** Whether a tyre was new. */
  public enum Wear {
    /** As sold; run in at most. */
    NEW("new"),
    /** Worn, be it on the road or by buffing. */
    WORN("worn");

    private final String key;

    Wear(String key) {
      this.key = key;
    }

    /** The word used in files, options and answers. */
    public String key() {
      return key;
    }

    /** The one with this word. */
    public static Optional<Wear> ofKey(String key) {
      return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
  }

  /** Checks that measures are finite and not negative. */
  public TyreState {
    Objects.requireNonNull(wear);
    check("tread depth", treadMm);
    check("mileage", mileageKm);
    check("age", ageYears);
  }

  private static void check(String what, Double value) {
    if (value != null && !(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("a " + what + " is 0 or more: " + value);
    }
  }

  /** A worn tyre, with its tread depth in mm where that is stated, else null. */
  public static TyreState worn(Double treadMm) {
    return new TyreState(Wear.WORN, treadMm, null, null);
  }
}
