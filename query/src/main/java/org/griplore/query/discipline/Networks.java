package org.griplore.query.discipline;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.Arms;
import org.griplore.query.network.ExcessScatter;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;
import org.griplore.query.statistics.SharedVariance;

/**
 * Fitted networks, kept for as long as their arms stay the same. A report that joins the archive
 * changes the arms of its own disciplines alone, so only those are fitted again; all else is found
 * here, whatever filter led to the arms. Safe for many threads.
 */
public final class Networks {
  private final SizedCache<Key, NetworkFit> fits;
  private final SizedCache<FitKey, Optional<Network>> recent;
  private final SizedCache<FitKey, PlacesStanding> places;
  private final SizedCache<FitKey, Optional<ExcessScatter>> scatters =
      new SizedCache<>(1 << 20, its -> 256);
  private final AtomicLong fitted = new AtomicLong();
  private Evidence of;

  private record FitKey(String discipline, List<Object> filter, VarianceMethod method) {
    FitKey(String discipline, Filter filter) {
      this(discipline, filter.key(), null);
    }
  }

  private record Key(Arms arms, VarianceMethod method) {}

  /** Keeps fits in a quarter of the memory that there is. */
  public Networks() {
    this(Runtime.getRuntime().maxMemory() / 4);
  }

  /** Keeps fits, and recent networks with theirs, in this many bytes. */
  Networks(long room) {
    this.places =
        new SizedCache<>(
            room / 8, its -> 1024 + 64L * its.rows().size() + 24L * its.entries().size());
    this.fits = new SizedCache<>(room / 2, fit -> bytes(fit.models(), fit.arms()));
    this.recent =
        new SizedCache<>(
            room / 2,
            network ->
                1024 + network.map(its -> bytes(its.models(), its.arms().size())).orElse(0L));
  }

  /** A fit keeps the inverse of its models, and an arm takes a few numbers. */
  private static long bytes(long models, long arms) {
    return 8 * models * models + 64 * arms;
  }

  /** The network of a discipline; empty when no test has two models with results. */
  public Optional<Network> of(
      Evidence evidence, String discipline, Filter filter, VarianceMethod method) {
    FitKey asked = new FitKey(discipline, filter.key(), method);
    Optional<Network> known = known(evidence, recent, asked);
    if (known != null) {
      return known;
    }
    DisciplineArms arms = DisciplineArms.of(evidence, discipline, filter);
    Optional<Network> network =
        arms.hasPair()
            ? Optional.of(network(arms, method, () -> beside(evidence, discipline, filter)))
            : Optional.empty();
    keep(evidence, recent, asked, network);
    return network;
  }

  /**
   * The standing of a discipline by places.
   *
   * @throws IllegalArgumentException when ties alone leave a parameter without a finite estimate
   */
  public PlacesStanding byPlaces(Evidence evidence, String discipline, Filter filter) {
    FitKey asked = new FitKey(discipline, filter);
    PlacesStanding standing = known(evidence, places, asked);
    if (standing == null) {
      standing = PlacesStanding.of(evidence, discipline, filter);
      keep(evidence, places, asked, standing);
    }
    return standing;
  }

  /** What is at hand belongs to one evidence: another's positions mean something else. */
  private synchronized <V> V known(Evidence evidence, SizedCache<FitKey, V> kept, FitKey asked) {
    if (of != evidence) {
      recent.clear();
      places.clear();
      scatters.clear();
      of = evidence;
    }
    return kept.get(asked);
  }

  private synchronized <V> void keep(
      Evidence evidence, SizedCache<FitKey, V> kept, FitKey asked, V value) {
    if (of == evidence) {
      kept.put(asked, value);
    }
  }

  private Network network(
      DisciplineArms arms, VarianceMethod method, Supplier<Optional<SharedVariance>> beside) {
    Network.Numbered numbered = new Network.Numbered(arms);
    Key key = new Key(numbered.arms, method);
    NetworkFit fit = fits.get(key);
    if (fit == null) {
      fit = NetworkFitter.fit(key.arms, FitOptions.of(method));
      fitted.incrementAndGet();
      fits.put(key, fit);
    }
    boolean thin = fit.residualDf() > 0 && fit.residualDf() < SharedHeterogeneity.ENOUGH;
    NetworkFit own = fit;
    return new Network(arms, numbered, thin ? beside.get().map(own::sharing).orElse(own) : own);
  }

  /** What the other disciplines say of how far tests scatter. */
  private Optional<SharedVariance> beside(Evidence evidence, String discipline, Filter filter) {
    return SharedHeterogeneity.beside(
        discipline, evidence, other -> scatter(evidence, other, filter));
  }

  private Optional<ExcessScatter> scatter(Evidence evidence, String discipline, Filter filter) {
    FitKey asked = new FitKey(discipline, filter);
    Optional<ExcessScatter> scatter = known(evidence, scatters, asked);
    if (scatter == null) {
      DisciplineArms arms = DisciplineArms.of(evidence, discipline, filter);
      scatter =
          arms.hasPair() ? ExcessScatter.of(new Network.Numbered(arms).arms) : Optional.empty();
      keep(evidence, scatters, asked, scatter);
    }
    return scatter;
  }

  /** How many networks had to be fitted so far. */
  public long fitted() {
    return fitted.get();
  }
}
