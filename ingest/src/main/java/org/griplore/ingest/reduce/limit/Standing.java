package org.griplore.ingest.reduce.limit;

import java.util.List;

/**
 * Whether a set's result stands under the limits. A void result is still computed and shown; a
 * regulation would have the set, or the whole cycle, driven again.
 *
 * @param state whether it stands
 * @param reasons the limits that were broken, in words with their sources
 */
public record Standing(State state, List<String> reasons) {
  /** Whether it stands. */
  public enum State {
    VALID("valid"),
    /** The candidate itself broke a limit; the rest of its cycle is untouched. */
    VOID_BY_ITSELF("void: the candidate's own set breaks a limit"),
    /** A reference broke a limit, or drifted too far, and voids all candidates beside it. */
    VOID_BY_REFERENCE("void: the reference breaks a limit and voids its cycle");

    private final String words;

    State(String words) {
      this.words = words;
    }

    /** For a page. */
    public String words() {
      return words;
    }
  }

  /** A set that no limit is about. */
  public static final Standing UNJUDGED = new Standing(State.VALID, List.of());

  /** Keeps the list from changing. */
  public Standing {
    reasons = List.copyOf(reasons);
  }

  /** Whether it is valid. */
  public boolean isValid() {
    return state == State.VALID;
  }
}
