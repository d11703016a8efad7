package org.griplore.query.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.query.network.Compared;
import org.griplore.query.statistics.StepDistribution;

/** All generation steps of the archive in one discipline, so that the size of one has a meaning. */
public final class StepsOfArchive {
  private final List<ModelStep> steps;
  private final Optional<StepDistribution> distribution;

  private StepsOfArchive(List<ModelStep> steps, Optional<StepDistribution> distribution) {
    this.steps = steps;
    this.distribution = distribution;
  }

  /** The steps that the network can estimate with a standard error. */
  public static StepsOfArchive of(Network network, List<ModelStep> all) {
    List<ModelStep> estimated = new ArrayList<>();
    List<Compared> found = new ArrayList<>();
    for (ModelStep step : all) {
      if (network.compare(step.newer(), step.older()) instanceof Compared compared
          && compared.se().isPresent()
          && compared.se().getAsDouble() > 0) {
        estimated.add(step);
        found.add(compared);
      }
    }
    double[] differences = found.stream().mapToDouble(Compared::difference).toArray();
    double[] ses = found.stream().mapToDouble(c -> c.se().getAsDouble()).toArray();
    return new StepsOfArchive(estimated, StepDistribution.of(differences, ses));
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
}
