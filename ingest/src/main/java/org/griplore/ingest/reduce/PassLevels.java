package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.ingest.reduce.sample.StraightLine;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * Levels of a set's passes brought to the reference speed by the set's own slope, L - a lg(V /
 * V_ref), and to 20 degrees Celsius of the road, so that their mean is {@link CoastByNoise}'s
 * corrected level. The error of the slope is not in their spread; it counts little where the passes
 * lie on both sides of the reference speed.
 *
 * @param slope dB per decade of speed
 * @param shift temperature correction, dB; 0 without temperatures
 * @param withoutTemperature whether a pass lacks its surface temperature
 */
record PassLevels(double slope, double referenceKmh, double shift, boolean withoutTemperature) {
  static PassLevels of(List<LoggedRun> together, TyreClass tyreClass) {
    double reference = CoastByNoise.referenceSpeed(tyreClass);
    List<LoggedRun> passes =
        together.stream().filter(run -> !SetStatistics.isVoid(run) && isPass(run)).toList();
    StraightLine line =
        CoastByNoise.line(
            passes.stream()
                .map(run -> new CoastByNoise.Pass(run.fromKmh(), run.levelDb()))
                .toList(),
            reference,
            RunPosition.of(together.get(0)));
    boolean bare = passes.stream().map(LoggedRun::surfaceC).anyMatch(Objects::isNull);
    OptionalDouble surface =
        passes.stream()
            .map(LoggedRun::surfaceC)
            .filter(Objects::nonNull)
            .mapToDouble(d -> d)
            .average();
    double shift =
        bare || surface.isEmpty()
            ? 0
            : CoastByNoise.temperatureCorrection(tyreClass, surface.getAsDouble());
    return new PassLevels(line.slope(), reference, shift, bare);
  }

  private static boolean isPass(LoggedRun run) {
    return run.levelDb() != null && run.fromKmh() != null;
  }

  /** The pass's level at the reference speed; null when it lacks level or speed. */
  Double figure(LoggedRun run) {
    return isPass(run)
        ? (Double) (run.levelDb() - slope * Math.log10(run.fromKmh() / referenceKmh) + shift)
        : null;
  }
}
