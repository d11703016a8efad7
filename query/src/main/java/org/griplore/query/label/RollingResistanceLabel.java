package org.griplore.query.label;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.griplore.store.tyre.LabelEra;
import org.griplore.store.tyre.RollingResistanceClass;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Unit;

/** The rolling resistance class of a coefficient in N/kN. */
final class RollingResistanceLabel {
  private static final String WHAT = "rolling resistance coefficient";
  private static final String BOUNDS =
      "Bounds of both eras read in source; the coefficient is rounded to 0.1 before it is classed";

  private RollingResistanceLabel() {}

  static LabelClaim of(String model, double value, String unit, LabelFacts facts) {
    String whyNot =
        Unit.NEWTON_PER_KILONEWTON.symbol().equals(unit)
            ? facts.whyNoCarTyre()
            : "the figure is no coefficient in N/kN";
    if (whyNot != null) {
      return LabelClaim.none(model, "rolling-resistance", WHAT, BOUNDS, whyNot);
    }
    return new LabelClaim(
        model,
        "rolling-resistance",
        WHAT,
        BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).doubleValue(),
        unit,
        letter(value, LabelEra.ERA_2021),
        letter(value, LabelEra.ERA_2012),
        BOUNDS,
        "holds for a coefficient aligned to a reference machine (2020/740 annex V), which the source"
            + " does not say of this one");
  }

  private static String letter(double value, LabelEra era) {
    return RollingResistanceClass.of(value, TyreClass.C1, era).letter();
  }
}
