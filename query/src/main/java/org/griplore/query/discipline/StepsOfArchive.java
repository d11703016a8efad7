package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.griplore.query.network.EstimatedComparison;
import org.griplore.query.statistics.StepDistribution;
import org.griplore.query.statistics.StepPace;
import org.griplore.store.archive.ModelRecord;

/** All generation steps of the archive in one discipline, so that the size of one has a meaning. */
public final class StepsOfArchive {
  private final List<ModelStep> steps;
  private final Optional<StepDistribution> distribution;
  private final Optional<StepPace> pace;

  private StepsOfArchive(
      List<ModelStep> steps, double[] differences, double[] ses, List<ModelRecord> models) {
    this.steps = steps;
    this.distribution = StepDistribution.of(differences, ses);
    this.pace = pace(models, differences, ses);
  }

  /** The steps that the network can estimate with a standard error. */
  static StepsOfArchive of(Network network, List<ModelRecord> models) {
    List<ModelStep> estimated = new ArrayList<>();
    List<EstimatedComparison> found = new ArrayList<>();
    for (ModelStep step : ModelStep.all(models)) {
      if (network.compare(step.newer(), step.older()) instanceof EstimatedComparison compared
          && compared.se().isPresent()
          && compared.se().getAsDouble() > 0) {
        estimated.add(step);
        found.add(compared);
      }
    }
    double[] differences = found.stream().mapToDouble(EstimatedComparison::difference).toArray();
    double[] ses = found.stream().mapToDouble(StepsOfArchive::error).toArray();
    return new StepsOfArchive(estimated, differences, ses, models);
  }

  /** The standard error that a normal interval as wide as the step's own would have. */
  private static double error(EstimatedComparison step) {
    return step.se().orElseThrow() * step.estimate().scale().normalFactor();
  }

  /** How many steps there are. */
  public int count() {
    return steps.size();
  }

  /** The share of steps that this one is larger than; null when it cannot be said. */
  public Double percentile(ModelStep step) {
    int position = steps.indexOf(step);
    return position < 0 || distribution.isEmpty()
        ? null
        : (Double) distribution.get().percentile(position);
  }

  /** How the steps are distributed; empty when there are too few. */
  public Optional<StepDistribution> distribution() {
    return distribution;
  }

  /** The usual gain a year, by the steps whose launches are known; empty when there are too few. */
  public Optional<StepPace> pace() {
    return pace;
  }

  private Optional<StepPace> pace(List<ModelRecord> models, double[] differences, double[] ses) {
    int[] timed =
        IntStream.range(0, steps.size())
            .filter(i -> steps.get(i).years(models) != null && steps.get(i).years(models) > 0)
            .toArray();
    return StepPace.of(
        Arrays.stream(timed).mapToDouble(i -> differences[i]).toArray(),
        Arrays.stream(timed).mapToDouble(i -> ses[i]).toArray(),
        Arrays.stream(timed).mapToDouble(i -> steps.get(i).years(models)).toArray(),
        distribution.map(StepDistribution::spread).orElse(0.0));
  }
}
