package org.griplore.query.label;

import org.griplore.store.tyre.LabelEra;
import org.griplore.store.tyre.NoiseClass;
import org.griplore.store.tyre.NoiseLimit;
import org.griplore.store.vocabulary.Authority;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.SeasonClass;

/** The class of external rolling noise of a set that coasted by, against its width's limit. */
final class NoiseLabel {
  private static final String WHAT = "external rolling noise";
  private static final String METHOD =
      "UN Regulation No. 117 annex 3; limit values of Regulation (EC) 661/2009 annex II part C read"
          + " in source; class edges, tolerance and addition for snow and extra load "
          + Authority.MEMORY.words();

  private NoiseLabel() {}

  /**
   * @param reduction null where the level was not reduced from passes
   * @param set likewise
   */
  static LabelClaim of(String model, Reduction reduction, ReducedSet set, LabelFacts facts) {
    String whyNot = whyNot(reduction, set, facts);
    if (whyNot != null) {
      return LabelClaim.none(model, "exterior-noise", WHAT, METHOD, whyNot);
    }
    int declared = NoiseClass.declared(set.mean());
    int limit = limit(facts);
    return new LabelClaim(
        model,
        "exterior-noise",
        WHAT,
        (double) declared,
        "dB(A)",
        NoiseClass.of(declared, limit, LabelEra.ERA_2021).symbol(),
        NoiseClass.of(declared, limit, LabelEra.ERA_2012).symbol(),
        METHOD,
        "relative to the limit of its own width, "
            + limit
            + " dB(A): compare tyres by dB(A), not by letter");
  }

  private static String whyNot(Reduction reduction, ReducedSet set, LabelFacts facts) {
    String noTyre = facts.whyNoCarTyre();
    if (noTyre != null) {
      return noTyre;
    }
    if (reduction == null || !"C1".equals(reduction.coastBy())) {
      return "the level is not known to be by the coast-by method at 80 km/h and 20 \u00b0C of the"
          + " road (the limit of its width is "
          + limit(facts)
          + " dB(A))";
    }
    if (set.runs().stream()
        .anyMatch(run -> run.leftOut() == null && run.run().surfaceC() == null)) {
      return "the log lacks the temperature of the road";
    }
    return facts.season() == null ? "it is not known whether it is a snow tyre" : null;
  }

  private static int limit(LabelFacts facts) {
    boolean snow = facts.season() == SeasonClass.WINTER || facts.size().snowflake();
    return NoiseLimit.car((int) facts.size().widthMm(), snow || facts.size().extraLoad());
  }
}
