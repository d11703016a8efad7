package org.griplore.ingest.reduce.limit;

import java.util.Locale;
import java.util.Objects;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.store.vocabulary.Authority;

/**
 * A validity limit, with where it comes from.
 *
 * @param what what is limited
 * @param bound the bound: a fraction for spreads and drifts, a count otherwise
 * @param strict whether the bound itself already breaks it ({@code < 3 %} against {@code <= 6 %})
 * @param source the text it is quoted from
 * @param authority how sure that is
 */
public record Limit(What what, double bound, boolean strict, String source, Authority authority) {
  /** What a limit is about. */
  public enum What {
    /** Coefficient of variation of one set's figures. Breaking it voids. */
    VARIATION_WITHIN_SET,
    /** |R2 - R1| / R1 between two reference measurements that follow each other. Voids. */
    REFERENCE_DRIFT,
    /** Candidates between two reference measurements; more are remarked on. */
    CANDIDATES_BETWEEN,
    /** Runs that count in a set; fewer are remarked on. */
    FEWEST_RUNS
  }

  /** Checks the parts. */
  public Limit {
    Objects.requireNonNull(what);
    Objects.requireNonNull(source);
    Objects.requireNonNull(authority);
    RunPosition.positive(bound, "limit", what.name().toLowerCase(Locale.ROOT));
  }

  /** Whether this figure keeps to the limit. */
  public boolean holds(double figure) {
    if (what == What.FEWEST_RUNS) {
      return figure >= bound;
    }
    return strict ? figure < bound : figure <= bound;
  }

  /** The limit and its source in words. */
  public String words() {
    String rule =
        switch (what) {
          case VARIATION_WITHIN_SET -> "CV within a set " + sign() + percent();
          case REFERENCE_DRIFT -> "reference drift " + sign() + percent() + " of the earlier mean";
          case CANDIDATES_BETWEEN ->
              String.format(Locale.ROOT, "at most %.0f candidates between references", bound);
          case FEWEST_RUNS -> String.format(Locale.ROOT, "at least %.0f runs a set", bound);
        };
    return rule + " (" + source + "; " + authority.words() + ")";
  }

  /** What it means to break it. */
  public String consequence() {
    return switch (what) {
      case VARIATION_WITHIN_SET ->
          "a reference that breaks it voids the cycles beside it, a candidate only itself";
      case REFERENCE_DRIFT -> "voids the cycle";
      case CANDIDATES_BETWEEN, FEWEST_RUNS -> "remarked on, voids nothing";
    };
  }

  private String sign() {
    return strict ? "below " : "at most ";
  }

  private String percent() {
    return String.format(Locale.ROOT, "%s %%", Math.round(bound * 1e6) / 1e4).replace(".0 %", " %");
  }
}
