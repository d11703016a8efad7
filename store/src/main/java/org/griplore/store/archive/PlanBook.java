package org.griplore.store.archive;

import java.sql.Connection;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.griplore.store.archive.kept.Plans;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Refusal;

/**
 * The plans of an archive, what was expected of them, and the runs of their days. Every change is
 * on disk before its method returns. A frozen plan and an entered line never change.
 */
public final class PlanBook {
  private final Archive archive;
  private final Connection reading;

  PlanBook(Archive archive, Connection reading) {
    this.archive = archive;
    this.reading = reading;
  }

  /** All plans, in the order they were made. */
  public List<PlanRecord> all() {
    return Plans.all(reading);
  }

  /** The plan of this name. */
  public Optional<PlanRecord> named(String name) {
    return Plans.named(reading, name);
  }

  /**
   * Saves a plan, as JSON; one that is not frozen is replaced.
   *
   * @throws Refusal when the plan of this name is frozen, or the archive cannot be written
   */
  public PlanRecord save(String name, String plan) {
    return change("nothing was saved", connection -> Plans.save(connection, name, plan));
  }

  /**
   * Freezes a plan with what is expected, as JSON, and the digest of the archive that says so.
   *
   * @throws Refusal when there is no such plan, or it is frozen already
   */
  public PlanRecord freeze(String name, String forecast, String digest, Clock clock) {
    return change(
        "nothing was frozen",
        connection -> Plans.freeze(connection, name, forecast, digest, clock.instant()));
  }

  /** The lines of a plan's day, in the order of entering, corrected ones included. */
  public List<TrackRun> runs(String plan) {
    return Plans.runs(reading, plan);
  }

  /**
   * Enters a run of the day, or a correction of one.
   *
   * @param corrects the line that it corrects; null when it is a run of its own
   * @throws Refusal when there is no such plan or line
   */
  public TrackRun enter(String plan, LoggedRun run, Long corrects, Clock clock) {
    return change(
        "nothing was entered",
        connection -> Plans.enter(connection, plan, run, corrects, clock.instant()));
  }

  /** The disciplines that were given up on the day, with the reason, by key. */
  public Map<String, String> aborted(String plan) {
    return Plans.aborted(reading, plan);
  }

  /** Gives a discipline up, with the reason. */
  public void abort(String plan, String discipline, String reason, Clock clock) {
    change(
        "nothing was given up",
        connection -> {
          Plans.abort(connection, plan, discipline, reason, clock.instant());
          return plan;
        });
  }

  private <T> T change(String done, Function<Connection, T> change) {
    archive.refuseUnwritable(done);
    return WholeChange.make(archive, done, change);
  }
}
