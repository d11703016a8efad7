package org.griplore.query.estimate;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.network.Arms;
import org.griplore.query.network.FitOptions;
import org.griplore.query.network.NetworkFit;
import org.griplore.query.network.NetworkFitter;
import org.griplore.query.network.VarianceMethod;

/**
 * Fitted networks, kept for as long as their arms stay the same. A report that joins the archive
 * changes the arms of its own disciplines alone, so only those are fitted again; all else is found
 * here, whatever filter led to the arms. Safe for many threads.
 */
public final class Networks {
  /** A fit keeps the inverse of its models: eight bytes a pair. */
  private static final long BYTES_A_PAIR = 8;

  private final long room;
  private final Map<Key, NetworkFit> fits = new LinkedHashMap<>(16, 0.75f, true);
  private long kept;
  private long fitted;

  private record Key(Arms arms, VarianceMethod method) {
    long bytes() {
      return BYTES_A_PAIR * arms.models() * arms.models() + 64L * arms.size();
    }
  }

  /** Keeps fits in an eighth of the memory that there is. */
  public Networks() {
    this(Runtime.getRuntime().maxMemory() / 8);
  }

  /** Keeps fits in this many bytes, the longest unused going first. */
  Networks(long room) {
    this.room = room;
  }

  /** The network of a discipline; empty when no test has two models with results. */
  public Optional<Network> of(
      Evidence evidence, String discipline, Filter filter, VarianceMethod method) {
    DisciplineArms arms = DisciplineArms.of(evidence, discipline, filter);
    if (!arms.hasPair()) {
      return Optional.empty();
    }
    Network.Numbered numbered = new Network.Numbered(arms);
    return Optional.of(new Network(arms, numbered, fit(new Key(numbered.arms, method))));
  }

  /** How many networks had to be fitted so far. */
  public synchronized long fitted() {
    return fitted;
  }

  private NetworkFit fit(Key key) {
    synchronized (this) {
      NetworkFit known = fits.get(key);
      if (known != null) {
        return known;
      }
    }
    NetworkFit fit = NetworkFitter.fit(key.arms, FitOptions.of(key.method));
    synchronized (this) {
      fitted++;
      if (key.bytes() <= room && fits.put(key, fit) == null) {
        kept += key.bytes();
      }
      Iterator<Key> oldest = fits.keySet().iterator();
      while (kept > room) {
        kept -= oldest.next().bytes();
        oldest.remove();
      }
    }
    return fit;
  }
}
