package org.griplore.query.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.ResultColumns;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.TyreState.Wear;

/**
 * The part of a filter that asks how a figure came about: on new or worn tyres, measured or not, at
 * which temperatures, and in which tests not. Without a word of it, measured results of new tyres
 * count, and of a test with several series the fullest: only like meets like.
 */
final class Conditions {
  private static final double COLDEST = -60;
  private static final double WARMEST = 90;

  private final Evidence evidence;
  private final Wear wear;
  private final ResultKind kind;
  private final Range surface;
  private final Range air;
  private final TreeSet<Integer> without;
  private final TreeSet<String> withoutKeys;

  /** A range of temperatures, degrees Celsius; null ends are open. */
  private record Range(String what, Double from, Double to) {
    static Range of(String what, Choices choices) {
      Range range = new Range(what, end(what + "-from", choices), end(what + "-to", choices));
      if (range.from != null && range.to != null && range.from > range.to) {
        throw Choices.refusal(
            what + "-from",
            choices.text(what + "-from"),
            "a temperature that is not above `" + what + "-to`, " + choices.text(what + "-to"));
      }
      return range;
    }

    private static Double end(String option, Choices choices) {
      return choices.has(option)
          ? (Double) choices.number(option, COLDEST, WARMEST).getAsDouble()
          : null;
    }

    boolean isOpen() {
      return from == null && to == null;
    }

    Optional<String> reasonAgainst(Double celsius) {
      if (isOpen()) {
        return Optional.empty();
      }
      if (celsius == null) {
        return Optional.of("temperature of the " + what + " not stated");
      }
      return from != null && celsius < from || to != null && celsius > to
          ? Optional.of("another temperature of the " + what)
          : Optional.empty();
    }

    String words() {
      String ends =
          from == null
              ? "to " + degrees(to)
              : to == null ? "from " + degrees(from) : degrees(from) + " to " + degrees(to);
      return what + " " + ends + " \u00b0C";
    }

    private static String degrees(double celsius) {
      return celsius == Math.rint(celsius)
          ? String.valueOf((long) celsius)
          : String.valueOf(celsius);
    }
  }

  /**
   * Reads {@code state}, {@code evidence}, {@code surface-from} and the like, and {@code without}.
   *
   * @throws org.griplore.store.vocabulary.Refusal when a word, a range or a test is not understood
   */
  Conditions(Choices choices, Evidence evidence) {
    this(
        evidence,
        choices.has("state") ? Wear.ofKey(choices.text("state")).orElse(null) : Wear.NEW,
        choices.has("evidence")
            ? ResultKind.ofKey(choices.text("evidence")).orElseThrow()
            : ResultKind.MEASURED,
        Range.of("surface", choices),
        Range.of("air", choices),
        new TreeSet<>(choices.all("without")));
  }

  private Conditions(
      Evidence evidence,
      Wear wear,
      ResultKind kind,
      Range surface,
      Range air,
      TreeSet<String> withoutKeys) {
    this.evidence = evidence;
    this.wear = wear;
    this.kind = kind;
    this.surface = surface;
    this.air = air;
    this.withoutKeys = withoutKeys;
    this.without = new TreeSet<>();
    withoutKeys.forEach(key -> without.add(TestKeys.position(evidence, key)));
  }

  /** The same with figures of every kind and tyres in every state. */
  Conditions ofEveryKind() {
    return new Conditions(evidence, null, null, surface, air, withoutKeys);
  }

  /** Whether anything is asked beyond what counts without a word. */
  boolean isAsked() {
    return wear != Wear.NEW
        || kind != ResultKind.MEASURED
        || !surface.isOpen()
        || !air.isOpen()
        || !without.isEmpty();
  }

  /** Whether everything counts. */
  boolean isOpen() {
    return surface.isOpen()
        && air.isOpen()
        && without.isEmpty()
        && (wear == null || wear == Wear.NEW && !evidence.hasWornTyres())
        && (kind == null
            || kind == ResultKind.MEASURED && evidence.snapshot().circumstances().size() <= 1);
  }

  /** Why an entry does not count; empty when it does. */
  Optional<String> reasonAgainstEntry(int entry) {
    if (without.contains(evidence.entries().test()[entry])) {
      return Optional.of("tests left out by --without");
    }
    Wear its = evidence.entries().state()[entry].wear();
    return wear == null || wear == its
        ? Optional.empty()
        : Optional.of(its == Wear.WORN ? "worn tyres" : "new tyres");
  }

  /** Why a result of an entry that counts does not; empty when it does. */
  Optional<String> reasonAgainstResult(int result) {
    if (kind != null) {
      ResultKind its = evidence.series().kind(result);
      if (its != kind) {
        return Optional.of(
            "figures that are " + its.key() + (its == ResultKind.MEASURED ? "" : ", not measured"));
      }
      if (evidence.series().isAside(result)) {
        return Optional.of("further speeds or conditions of a test, of which the fullest counts");
      }
    }
    if (surface.isOpen() && air.isOpen()) {
      return Optional.empty();
    }
    ResultColumns results = evidence.results();
    Circumstance own = evidence.snapshot().circumstances().get(results.circumstance()[result]);
    int entry = results.entry()[result];
    Details test = evidence.tests().get(evidence.entries().test()[entry]).details();
    Optional<String> reason =
        surface.reasonAgainst(own.surfaceC() == null ? test.surfaceC() : own.surfaceC());
    return reason.isPresent()
        ? reason
        : air.reasonAgainst(own.airC() == null ? test.airC() : own.airC());
  }

  /** What it asks, equal for conditions that let the same results count. */
  List<Object> key() {
    return Arrays.asList(wear, kind, surface, air, without);
  }

  /** Adds what it asks, in words. */
  void words(List<String> words) {
    if (wear != Wear.NEW) {
      words.add(wear == null ? "new and worn tyres" : "worn tyres");
    }
    if (kind != ResultKind.MEASURED && kind != null) {
      words.add(kind.key() + " figures");
    }
    for (Range range : List.of(surface, air)) {
      if (!range.isOpen()) {
        words.add(range.words());
      }
    }
    if (!withoutKeys.isEmpty()) {
      words.add("without " + String.join(" and ", withoutKeys));
    }
  }
}
