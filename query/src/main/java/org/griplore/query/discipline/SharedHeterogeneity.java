package org.griplore.query.discipline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.network.ExcessScatter;
import org.griplore.query.statistics.SharedVariance;
import org.griplore.store.vocabulary.Discipline;

/**
 * What an archive's other disciplines say of how far tests scatter beyond their runs, for a
 * discipline that has few tests of its own: the generalised Q over its degrees of freedom in each
 * other discipline of the same scale (ratio, level or points), under the same filter. The thought
 * is that of Turner et al. 2015, Stat Med 34:984, who draw the heterogeneity of a new meta-analysis
 * from many others of its kind.
 */
final class SharedHeterogeneity {
  /** With as many residual degrees of freedom a discipline speaks for itself. */
  static final int ENOUGH = 40;

  private SharedHeterogeneity() {}

  /** From all disciplines but one; empty when too few of its scale can tell. */
  static Optional<SharedVariance> beside(
      String discipline, Evidence evidence, Function<String, Optional<ExcessScatter>> of) {
    var scale = evidence.catalogue().get(discipline).scale();
    List<ExcessScatter> told = new ArrayList<>();
    for (Discipline other : evidence.catalogue().all()) {
      boolean counts =
          other.scale() == scale
              && !other.key().equals(discipline)
              && !other.key().equals("overall")
              && evidence.discipline(other.key()) >= 0;
      if (counts) {
        of.apply(other.key()).ifPresent(told::add);
      }
    }
    return SharedVariance.of(
        told.stream().mapToDouble(ExcessScatter::ratio).toArray(),
        told.stream().mapToDouble(ExcessScatter::df).toArray());
  }
}
