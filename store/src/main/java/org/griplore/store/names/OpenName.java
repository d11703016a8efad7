package org.griplore.store.names;

import java.util.List;
import org.griplore.store.archive.NameUse;

/**
 * A name that nobody has decided on.
 *
 * @param use the name, and where it is used
 * @param takenAs the model it is taken for until then; its own name when for a model of its own
 * @param candidates the models it could mean, best first
 */
public record OpenName(NameUse use, String takenAs, List<Candidate> candidates) {
  /** The name. */
  public String name() {
    return use.name();
  }

  /** Whether it is taken for another model, on an assumption. */
  public boolean isAssumed() {
    return !takenAs.equals(name());
  }

  /** How alike the likeliest candidate is, from 0 to 1; 0 where there is none. */
  public double likeness() {
    return candidates.isEmpty() ? 0 : candidates.get(0).score();
  }
}
