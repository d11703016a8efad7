package org.griplore.query.label;

import java.util.List;
import java.util.Objects;
import org.griplore.store.tyre.LabelEra;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.tyre.WetGripClass;
import org.griplore.store.tyre.WetGripIndex;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.Unit;

/**
 * The wet grip class of a reduced set, by the car method of the 2011 text of Regulation (EC)
 * 1222/2009 annex V. The newer text's coefficients are not shipped, so tests since May 2021 get
 * none.
 */
final class WetGripLabel {
  private static final String WHAT = "wet grip index G";
  private static final String FIRST_MONTH = "2011-03";
  private static final String LAST_MONTH = "2021-05";

  private WetGripLabel() {}

  static LabelClaim of(String model, Reduction reduction, ReducedSet set, LabelFacts facts) {
    String whyNot = whyNot(reduction, set, facts);
    if (whyNot != null) {
      return LabelClaim.none(
          model, reduction.discipline(), WHAT, WetGripIndex.TEXT_OF_2011, whyNot);
    }
    WetGripIndex index =
        WetGripIndex.of2011(
            WetGripIndex.coefficient(set.mean()),
            WetGripIndex.coefficient(set.reference()),
            surface(set),
            facts.season() == SeasonClass.WINTER ? WetGripIndex.Use.SNOW : WetGripIndex.Use.NORMAL,
            WetGripIndex.Method.CAR);
    return new LabelClaim(
        model,
        reduction.discipline(),
        WHAT,
        WetGripClass.labelIndex(index.testIndex()).doubleValue(),
        "",
        letter(index, LabelEra.ERA_2021),
        letter(index, LabelEra.ERA_2012),
        index.edition(),
        "an indication and no declaration: track, water depth and vehicle of the method were not"
            + " checked");
  }

  private static String letter(WetGripIndex index, LabelEra era) {
    return WetGripClass.ofMeasured(index.testIndex(), TyreClass.C1, era).letter();
  }

  private static String whyNot(Reduction reduction, ReducedSet set, LabelFacts facts) {
    if (reduction.unit() != Unit.METRE_PER_SECOND_SQUARED
        || !Objects.equals(reduction.fromKmh(), 80.0)
        || !Objects.equals(reduction.toKmh(), 20.0)) {
      return "the method takes mean decelerations from 80 to 20 km/h";
    }
    if (set.reference() == null || !isStandardReference(reference(reduction))) {
      return "the reference is \""
          + reference(reduction)
          + "\" and is not named as the standard reference tyre SRTT16 (ASTM F2493)";
    }
    if (!set.valid()) {
      return "the set does not stand under the limits";
    }
    if (facts.date() == null || facts.date().equals("2021") || facts.date().equals("2011")) {
      return "the date is not known, and with it not the edition of the method";
    }
    if (facts.date().compareTo(FIRST_MONTH) < 0 || facts.date().compareTo(LAST_MONTH) >= 0) {
      return "the 2011 text held from March 2011 to April 2021; coefficients of other editions are"
          + " not shipped";
    }
    if (facts.season() != SeasonClass.SUMMER && facts.season() != SeasonClass.WINTER) {
      return "it is not known whether the tyre counts as a normal or as a snow tyre";
    }
    if (set.runs().stream()
        .anyMatch(run -> run.leftOut() == null && run.run().surfaceC() == null)) {
      return "the log lacks the temperature of the wetted surface";
    }
    return facts.whyNoCarTyre();
  }

  private static String reference(Reduction reduction) {
    return reduction.sets().stream()
        .filter(set -> set.role() == org.griplore.store.vocabulary.LoggedRun.Role.REFERENCE)
        .map(ReducedSet::model)
        .findFirst()
        .orElse("none");
  }

  private static boolean isStandardReference(String name) {
    String key = NameKey.of(name).replace(" ", "");
    return List.of("srtt16", "f2493").stream().anyMatch(key::contains) && !key.contains("srtt16c");
  }

  private static double surface(ReducedSet set) {
    return set.runs().stream()
        .filter(run -> run.leftOut() == null)
        .mapToDouble(run -> run.run().surfaceC())
        .average()
        .orElseThrow();
  }
}
