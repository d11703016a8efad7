package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;

/**
 * Two vehicles joined by a control tyre, where candidate and reference cannot be driven on one: the
 * reference and the control on the first, the control and the candidate on the second; index = SG1
 * x SG2, the product of the ratios (UN Regulation No. 109 annex 10, 4.9.2, read in source). Assumes
 * that the control compares alike on both vehicles.
 */
public final class ControlChain {
  private ControlChain() {}

  /**
   * The candidate against the reference. The two logs share no source of uncertainty, so that their
   * variances add.
   *
   * @param control control against reference, on the first vehicle
   * @param candidate candidate against control, on the second vehicle
   */
  public static Effect join(Effect control, Effect candidate) {
    List<UncertaintyPart> components = new ArrayList<>();
    add("first vehicle, ", control, components);
    add("second vehicle, ", candidate, components);
    return new Effect(control.value() + candidate.value(), components);
  }

  private static void add(String vehicle, Effect effect, List<UncertaintyPart> components) {
    for (UncertaintyPart c : effect.components()) {
      components.add(
          new UncertaintyPart(vehicle + c.source(), c.load(), c.variance(), c.freedom()));
    }
  }
}
