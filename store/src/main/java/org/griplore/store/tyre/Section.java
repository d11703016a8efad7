package org.griplore.store.tyre;

import java.util.OptionalInt;

/** How a size states the tyre's section. */
public sealed interface Section {
  /**
   * Nominal section width in mm and aspect ratio in per cent.
   *
   * @param widthMm nominal section width, mm
   * @param aspect section height over width, %; empty for older tyres without a figure
   */
  record Metric(int widthMm, OptionalInt aspect) implements Section {
    /** Checks the ranges met on road tyres. */
    public Metric {
      if (widthMm < 100 || widthMm > 455) {
        throw new IllegalArgumentException("section width 100 to 455 mm, not " + widthMm);
      }
      if (aspect.isPresent() && (aspect.getAsInt() < 20 || aspect.getAsInt() > 100)) {
        throw new IllegalArgumentException("aspect ratio 20 to 100, not " + aspect.getAsInt());
      }
    }
  }

  /**
   * Outside diameter and width in inches (flotation).
   *
   * @param diameterIn outside diameter, inches
   * @param widthIn section width, inches
   */
  record Flotation(double diameterIn, double widthIn) implements Section {
    /** Checks the ranges met on road tyres. */
    public Flotation {
      if (diameterIn < 20 || diameterIn > 54 || widthIn < 5 || widthIn > 20) {
        throw new IllegalArgumentException(
            "diameter 20 to 54 in and width 5 to 20 in, not " + diameterIn + " x " + widthIn);
      }
    }
  }
}
