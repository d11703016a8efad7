package org.griplore.store.vocabulary;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What is tested, and how two results of it are compared. Disciplines are data: the catalogue reads
 * them from JSON, and a user adds one without code.
 *
 * @param key its name in files, options and answers
 * @param name its name for people
 * @param unit canonical unit; results of the same dimension are converted to it
 * @param better which way is better in the canonical unit
 * @param scale how results in the canonical unit are compared
 * @param alternatives other dimensions it is published in, each with its own better direction
 * @param headerWords words and phrases for it in tables, by language ({@code en}, {@code de} ...)
 * @param repeatability how well runs of one set repeat; null where no value is known
 * @param describes what it is, in a sentence
 */
public record Discipline(
    String key,
    String name,
    Unit unit,
    Direction better,
    Scale scale,
    List<Alternative> alternatives,
    Map<String, List<String>> headerWords,
    Repeatability repeatability,
    String describes) {
  /** Another dimension that the discipline is published in. */
  public record Alternative(Dimension dimension, Direction better) {}

  /**
   * How well runs of one set of tyres repeat. One of the two figures is null.
   *
   * @param coefficientOfVariation of a ratio discipline, as a fraction
   * @param standardDeviation of a level or points discipline, in the canonical unit
   * @param source where the figure comes from, and how sure it is
   */
  public record Repeatability(
      Double coefficientOfVariation, Double standardDeviation, String source) {}

  /** Keeps the lists from changing. */
  public Discipline {
    Objects.requireNonNull(key);
    Objects.requireNonNull(name);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(better);
    Objects.requireNonNull(scale);
    alternatives = List.copyOf(alternatives);
    headerWords = Map.copyOf(headerWords);
    describes = describes == null ? "" : describes;
  }

  /** Whether a result may be given in this unit. */
  public boolean accepts(Unit given) {
    return switch (given.dimension()) {
      case POINTS, MARK, RELATIVE -> true;
      case NUMBER -> unit.dimension() == Dimension.NUMBER;
      default ->
          given.convertsTo(unit)
              || alternatives.stream().anyMatch(a -> a.dimension() == given.dimension());
    };
  }

  /**
   * Which way is better for results in this unit: school marks are better low; points and per cent
   * of the best better high; everything else as the discipline or its alternative says.
   */
  public Direction directionOf(Unit given) {
    return switch (given.dimension()) {
      case MARK -> Direction.LOW;
      case POINTS, RELATIVE -> Direction.HIGH;
      default ->
          given.dimension() == unit.dimension()
              ? better
              : alternatives.stream()
                  .filter(a -> a.dimension() == given.dimension())
                  .map(Alternative::better)
                  .findFirst()
                  .orElse(better);
    };
  }

  /** How two results in this unit are compared. */
  public Scale scaleOf(Unit given) {
    return switch (given.dimension()) {
      case LEVEL -> Scale.LEVEL;
      case POINTS, MARK -> Scale.POINTS;
      case NUMBER -> scale;
      default -> Scale.RATIO;
    };
  }
}
