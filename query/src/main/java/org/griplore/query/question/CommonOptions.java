package org.griplore.query.question;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.evidence.Citations;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;

/** Options and sentences that several questions share. */
public final class CommonOptions {
  /** The caution that goes with every comparison of results (after ASTM F1649, 5.3 and 5.4). */
  public static final String RESULTS_HOLD =
      "Results hold for the size, car, track and day they were measured with; another size of the"
          + " same model may rank differently.";

  /** The key of the reports' own totals, which are never set on one scale. */
  public static final String OVERALL = "overall";

  /** Models to look at; {@code Names.models} reads them. */
  public static final Option MODELS =
      Option.arguments("model", "MODEL", "the models to look at; all when none is named", false);

  /** The last place that counts as being among the first. */
  public static final Option TOP = Option.once("top", "K", "count places up to this one", "3");

  /** The smallest field that counts; {@link #TOP} and one more when not given. */
  public static final Option MIN_FIELD =
      Option.once(
          "min-field",
          "N",
          "count only tests that rank at least this many; one more than --top when not given",
          null);

  private CommonOptions() {}

  /** The option that names a discipline. */
  public static Option discipline(String fallback) {
    return Option.once(
        "discipline",
        "DISCIPLINE",
        "a discipline's key, like wet-braking" + (fallback == null ? "" : ", or overall"),
        fallback);
  }

  /**
   * The key of the discipline asked for.
   *
   * @throws org.griplore.store.vocabulary.Refusal when the catalogue does not have it
   */
  public static String discipline(Choices choices, DisciplineCatalogue catalogue) {
    return known("discipline", choices.text("discipline"), catalogue);
  }

  /**
   * A discipline's key, once it is known to be one.
   *
   * @throws org.griplore.store.vocabulary.Refusal when the catalogue does not have it
   */
  public static String known(String option, String key, DisciplineCatalogue catalogue) {
    List<String> known = catalogue.all().stream().map(Discipline::key).toList();
    if (key == null || !known.contains(key)) {
      throw Choices.refusal(option, key == null ? "" : key, "one of " + String.join(", ", known));
    }
    return key;
  }

  /**
   * The discipline asked for, when results of different tests are to be set on one scale.
   *
   * @throws org.griplore.store.vocabulary.Refusal when it is unknown, or the reports' own totals
   */
  public static String comparable(Choices choices, DisciplineCatalogue catalogue) {
    return comparable("discipline", choices.text("discipline"), catalogue);
  }

  /**
   * A discipline's key, when results of different tests are to be set on one scale.
   *
   * @throws org.griplore.store.vocabulary.Refusal when it is unknown, or the reports' own totals
   */
  public static String comparable(String option, String key, DisciplineCatalogue catalogue) {
    if (known(option, key, catalogue).equals(OVERALL)) {
      throw Choices.refusal(
          option,
          key,
          "a discipline: totals of different reports hold their testers' weights, so they are never"
              + " set on one scale; see `placings`");
    }
    return key;
  }

  /**
   * The disciplines asked for in an option that may be repeated, commas between keys or not; none
   * when it is not given.
   *
   * @throws org.griplore.store.vocabulary.Refusal when one is unknown, or the reports' own totals
   */
  public static Set<String> comparableAll(Choices choices, DisciplineCatalogue catalogue) {
    Set<String> keys = new LinkedHashSet<>();
    for (String value : choices.all("discipline")) {
      for (String key : value.split(",")) {
        if (!key.isBlank()) {
          keys.add(comparable("discipline", key.strip(), catalogue));
        }
      }
    }
    return keys;
  }

  /** Says how many of the cited reports makers supplied; nothing when none. */
  public static Optional<String> makerCaveat(Citations citations) {
    long makers = citations.fromMakers();
    return makers == 0
        ? Optional.empty()
        : Optional.of(
            makers
                + (makers == 1 ? " report was" : " reports were")
                + " supplied by a maker; `--source own --source independent` leaves them out.");
  }
}
