package org.griplore.ingest.reduce.limit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.reduce.limit.Limit.What;
import org.griplore.store.vocabulary.Authority;

/**
 * The validity limits that a log is judged by: at most one of each kind. Figures that were only
 * half remembered, such as a drift limit for wet braking, are no defaults; {@link #with} sets them.
 */
public record Limits(List<Limit> all) {
  private static final String SNOW = "UN Regulation No. 109 annex 10, ";
  private static final Limit THREE =
      new Limit(
          What.CANDIDATES_BETWEEN,
          3,
          false,
          "UN Regulation No. 117 annex 5, 4.2.7.2",
          Authority.READ);
  private static final Limit SIX_RUNS =
      new Limit(
          What.FEWEST_RUNS,
          6,
          false,
          "UN Regulation No. 117 annex 5, 3.2.1 and 4.2.7.2",
          Authority.READ);
  private static final Limit SIX_SNOW_STOPS =
      new Limit(What.FEWEST_RUNS, 6, false, SNOW + "3.2.1", Authority.READ);

  /** No limit at all: nothing is voided. */
  public static final Limits NONE = new Limits(List.of());

  /** Wet braking with a car. */
  public static final Limits WET_CAR =
      NONE.with(THREE)
          .with(SIX_RUNS)
          .with(
              new Limit(
                  What.VARIATION_WITHIN_SET,
                  0.03,
                  true,
                  "Regulation (EC) 1222/2009 annex V appendix A, example 2",
                  Authority.READ));

  /** Wet peak coefficient with a trailer. */
  public static final Limits WET_TRAILER =
      NONE.with(THREE)
          .with(SIX_RUNS)
          .with(
              new Limit(
                  What.VARIATION_WITHIN_SET,
                  0.05,
                  false,
                  "Regulation (EC) 1222/2009 annex V appendix A, example 1",
                  Authority.READ));

  /** Snow braking. */
  public static final Limits SNOW_BRAKING =
      NONE.with(SIX_SNOW_STOPS)
          .with(new Limit(What.CANDIDATES_BETWEEN, 3, false, SNOW + "table 1", Authority.READ))
          .with(snow(What.VARIATION_WITHIN_SET, 0.06, "3.4.2"))
          .with(snow(What.REFERENCE_DRIFT, 0.05, "3.4.2"));

  /** Snow acceleration. */
  public static final Limits SNOW_ACCELERATION =
      NONE.with(snow(What.VARIATION_WITHIN_SET, 0.06, "4.7.5.4"))
          .with(snow(What.REFERENCE_DRIFT, 0.06, "4.8.2"));

  /** Keeps the list from changing. */
  public Limits {
    all = List.copyOf(all);
    if (all.stream().map(Limit::what).distinct().count() < all.size()) {
      throw new IllegalArgumentException("two limits of one kind: " + all);
    }
  }

  private static Limit snow(What what, double bound, String paragraph) {
    return new Limit(what, bound, false, SNOW + paragraph, Authority.READ);
  }

  /** The published limits for a discipline of the catalogue; none where none was published. */
  public static Limits ofDiscipline(String key) {
    return switch (key) {
      case "wet-braking" -> WET_CAR;
      case "snow-braking" -> SNOW_BRAKING;
      case "snow-traction" -> SNOW_ACCELERATION;
      default -> NONE;
    };
  }

  /** These limits with one set, in place of any of its kind. */
  public Limits with(Limit limit) {
    List<Limit> others = new ArrayList<>(all);
    others.removeIf(other -> other.what() == limit.what());
    others.add(limit);
    return new Limits(others);
  }

  /** These limits with the user's own bound on the drift of the reference, as a fraction. */
  public Limits withDriftAtMost(double fraction) {
    return with(
        new Limit(What.REFERENCE_DRIFT, fraction, false, "set by the user", Authority.USER));
  }

  /** The limit of a kind. */
  public Optional<Limit> of(What what) {
    return all.stream().filter(limit -> limit.what() == what).findFirst();
  }
}
