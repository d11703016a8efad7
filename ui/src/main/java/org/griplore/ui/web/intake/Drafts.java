package org.griplore.ui.web.intake;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.griplore.ingest.ReadOptions;
import org.griplore.ui.web.gate.Gate;

/**
 * The drafts of this explorer, in memory only: a few at a time, for a limited time. What is let go
 * was never in the archive, and can be given again. Safe for many threads.
 */
public final class Drafts {
  /** No meaning: tables that one person compares with each other at one time. */
  public static final int MOST = 6;

  /** No meaning: long enough for a break. */
  static final Duration KEPT = Duration.ofHours(2);

  private final Clock clock;
  private final SecureRandom random = new SecureRandom();
  private final Map<String, Held> held = new LinkedHashMap<>();

  private record Held(Draft draft, Instant used) {}

  public Drafts(Clock clock) {
    this.clock = clock;
  }

  /** Keeps a new draft; the one that was not used for longest may go for it. */
  synchronized Draft add(String name, byte[] content, boolean pasted) {
    byte[] id = new byte[16];
    random.nextBytes(id);
    Draft draft = new Draft(HexFormat.of().formatHex(id), name, content, pasted, ReadOptions.NONE);
    put(draft);
    while (held.size() > MOST) {
      held.remove(held.keySet().iterator().next());
    }
    return draft;
  }

  /** Keeps a draft as it is now, as the one used last. */
  synchronized void put(Draft draft) {
    held.remove(draft.id());
    held.put(draft.id(), new Held(draft, clock.instant()));
  }

  /** Lets a draft go. */
  synchronized void remove(String id) {
    held.remove(id);
  }

  /**
   * A draft that is kept.
   *
   * @throws Gate.TurnedAway when there is none of this name, or none any more
   */
  synchronized Draft of(String id) {
    Instant oldest = clock.instant().minus(KEPT);
    held.values().removeIf(kept -> kept.used().isBefore(oldest));
    Held kept = id == null ? null : held.get(id);
    if (kept == null) {
      throw new Gate.TurnedAway(
          410,
          "This table is no longer kept here: it was added, or let go after a while; nothing else"
              + " was changed. Give it again at /add.");
    }
    put(kept.draft());
    return kept.draft();
  }
}
