package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What is measured or rated in a test.
 *
 * @param key the word in files, options and answers, like {@code wet-braking}
 * @param name the name a reader sees
 * @param dimension the physical kind of its usual unit
 * @param unit the unit in which results are kept and shown
 * @param better which way is better in that unit
 * @param scale how two results in that unit are compared
 * @param alternatives other quantities in which it is also published
 * @param headerWords phrases of headers and titles by language (en, de, fr, sv); the notation is
 *     that of {@link HeaderPhrase}
 * @param repeatability usual scatter of runs; null where nothing citable is known
 * @param describes one sentence: how it is measured
 */
public record Discipline(
    String key,
    String name,
    Dimension dimension,
    Unit unit,
    Direction better,
    Scale scale,
    List<Alternative> alternatives,
    Map<String, List<String>> headerWords,
    Repeatability repeatability,
    String describes) {

  /** Checks the parts and freezes the lists. */
  public Discipline {
    Objects.requireNonNull(key);
    Objects.requireNonNull(name);
    Objects.requireNonNull(better);
    Objects.requireNonNull(scale);
    Objects.requireNonNull(describes);
    if (unit.dimension() != dimension) {
      throw new IllegalArgumentException(key + ": the unit is not of the dimension");
    }
    alternatives = List.copyOf(alternatives);
    headerWords = Map.copyOf(headerWords);
  }

  /** The usual scatter of runs, where something citable is known. */
  public Optional<Repeatability> typicalRepeatability() {
    return Optional.ofNullable(repeatability);
  }

  /**
   * Whether results may come in this unit: the discipline's own dimension, an alternative's, or a
   * rating (points, marks, per cent of best or reference, a bare number).
   */
  public boolean accepts(Unit found) {
    return isRating(found) || found.dimension() == dimension || alternative(found).isPresent();
  }

  /**
   * Which way is better for values in this unit. Marks: low. Points and per cent of best or
   * reference: high. A bare number: as in the usual unit.
   *
   * @throws Refusal when the discipline is not published in this unit
   */
  public Direction directionOf(Unit found) {
    return switch (found.dimension()) {
      case MARK -> Direction.LOW;
      case POINTS, RELATIVE -> Direction.HIGH;
      case NUMBER -> better;
      default ->
          alternative(found)
              .map(Alternative::better)
              .orElseGet(
                  () -> {
                    requireOwn(found);
                    return better;
                  });
    };
  }

  /**
   * How two values in this unit are compared: physical quantities and per cent by ratio, dB as
   * levels, points and marks by difference. A bare number: as in the usual unit.
   *
   * @throws Refusal when the discipline is not published in this unit
   */
  public Scale scaleOf(Unit found) {
    return switch (found.dimension()) {
      case MARK, POINTS -> Scale.POINTS;
      case RELATIVE -> Scale.RATIO;
      case NUMBER -> scale;
      case LEVEL -> {
        keptIn(found);
        yield Scale.LEVEL;
      }
      default -> {
        keptIn(found);
        yield found.dimension() == dimension ? scale : Scale.RATIO;
      }
    };
  }

  /**
   * The unit in which a value found in this unit is kept: the usual unit, an alternative's unit, or
   * the unit itself for ratings and for a currency that does not convert.
   *
   * @throws Refusal when the discipline is not published in this unit
   */
  public Unit keptIn(Unit found) {
    if (isRating(found)) {
      return found;
    }
    Optional<Alternative> other = alternative(found);
    if (other.isPresent()) {
      return other.get().unit();
    }
    requireOwn(found);
    return found.convertsTo(unit) && found.dimension() != Dimension.CURRENCY ? unit : found;
  }

  private Optional<Alternative> alternative(Unit found) {
    return alternatives.stream()
        .filter(
            other ->
                other.dimension() == dimension
                    ? other.unit() == found
                    : other.dimension() == found.dimension())
        .findFirst();
  }

  private void requireOwn(Unit found) {
    if (found.dimension() != dimension) {
      throw new Refusal(
          key + " is not published in " + found.symbol() + "; expected " + unit.symbol(),
          new Problem(key, found.symbol(), "a unit like " + unit.symbol()));
    }
  }

  private static boolean isRating(Unit found) {
    return switch (found.dimension()) {
      case MARK, POINTS, RELATIVE, NUMBER -> true;
      default -> false;
    };
  }
}
