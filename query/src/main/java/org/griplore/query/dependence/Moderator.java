package org.griplore.query.dependence;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.griplore.query.evidence.Evidence;
import org.griplore.store.tyre.TyreSize;
import org.griplore.store.vocabulary.Details;

/** What a contrast may depend on. */
enum Moderator {
  RIM("rim diameter", "inch", 1, "inch", "on larger rims"),
  WIDTH("section width", "mm", 10, "10 mm", "in wider sizes"),
  MASS("vehicle mass", "kg", 100, "100 kg", "on heavier cars"),
  TEMPERATURE("temperature", "°C", 10, "10 K", "when it is warmer"),
  YEAR("year", "", 1, "year", "in later years");

  private final String words;
  private final String unit;
  private final double step;
  private final String per;
  private final String more;

  Moderator(String words, String unit, double step, String per, String more) {
    this.words = words;
    this.unit = unit;
    this.step = step;
    this.per = per;
    this.more = more;
  }

  /** The word in options and answers. */
  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static List<String> keys() {
    return Arrays.stream(values()).map(Moderator::key).toList();
  }

  /** The unit its values are in; empty for a year. */
  String unit() {
    return unit;
  }

  /** How much of its unit a slope is for. */
  double step() {
    return step;
  }

  /** The same in words. */
  String per() {
    return per;
  }

  /** Where there is more of it, in words. */
  String more() {
    return more;
  }

  /** Its values in some tests, all measured in one way. */
  record Values(String words, List<OptionalDouble> of) {
    long stated() {
      return of.stream().filter(OptionalDouble::isPresent).count();
    }
  }

  /**
   * Its values in the tests. A temperature is that of the surface, or that of the air where more
   * tests state that one; the two are never mixed.
   */
  Values in(Evidence evidence, List<TestContrast> contrasts) {
    return switch (this) {
      case RIM -> ofSizes(evidence, contrasts, TyreSize::rimCode);
      case WIDTH -> ofSizes(evidence, contrasts, TyreSize::widthMm);
      case MASS -> ofTests(words, evidence, contrasts, Details::vehicleMassKg);
      case YEAR ->
          ofTests(
              words,
              evidence,
              contrasts,
              test -> test.date() == null ? null : (Double) (double) test.date().year());
      case TEMPERATURE -> {
        Values surface = ofTests("surface temperature", evidence, contrasts, Details::surfaceC);
        Values air = ofTests("air temperature", evidence, contrasts, Details::airC);
        yield air.stated() > surface.stated() ? air : surface;
      }
    };
  }

  private interface Stated {
    Double in(Details test);
  }

  private static Values ofTests(
      String words, Evidence evidence, List<TestContrast> contrasts, Stated stated) {
    return new Values(
        words,
        contrasts.stream()
            .map(contrast -> stated.in(evidence.tests().get(contrast.test()).details()))
            .map(value -> value == null ? OptionalDouble.empty() : OptionalDouble.of(value))
            .toList());
  }

  /** The mean over the entries; missing when the size of one is not stated. */
  private Values ofSizes(
      Evidence evidence, List<TestContrast> contrasts, ToDoubleFunction<TyreSize> dimension) {
    return new Values(
        words, contrasts.stream().map(contrast -> ofSizes(evidence, contrast, dimension)).toList());
  }

  private static OptionalDouble ofSizes(
      Evidence evidence, TestContrast contrast, ToDoubleFunction<TyreSize> dimension) {
    double sum = 0;
    for (int entry : contrast.entries()) {
      Optional<TyreSize> size = Optional.ofNullable(evidence.sizeOf(entry)).flatMap(TyreSize::find);
      if (size.isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += dimension.applyAsDouble(size.get());
    }
    return OptionalDouble.of(sum / contrast.entries().size());
  }
}
