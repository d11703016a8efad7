package org.griplore.store.archive.kept;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.store.archive.PlanRecord;
import org.griplore.store.archive.TrackRun;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.database.StoredMoment;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Unit;

/** Reads and writes plans, their forecasts and the runs of their day. */
public final class Plans {
  private Plans() {}

  /** All plans, in the order they were made. */
  public static List<PlanRecord> all(Connection connection) {
    return Sql.list(connection, "SELECT * FROM plan ORDER BY id", Plans::plan);
  }

  /** The plan of this name. */
  public static Optional<PlanRecord> named(Connection connection, String name) {
    return Sql.first(connection, "SELECT * FROM plan WHERE name = ?", Plans::plan, name);
  }

  /**
   * Saves a plan; one that is not frozen is replaced.
   *
   * @throws Refusal when the plan of this name is frozen
   */
  public static PlanRecord save(Connection connection, String name, String plan) {
    named(connection, name).ifPresent(known -> refuseFrozen(known, "nothing was saved"));
    Sql.execute(
        connection,
        "INSERT INTO plan (name, plan) VALUES (?1, ?2)"
            + " ON CONFLICT (name) DO UPDATE SET plan = excluded.plan",
        name,
        plan);
    return named(connection, name).orElseThrow();
  }

  /**
   * Freezes a plan with what is expected.
   *
   * @throws Refusal when there is no such plan, or it is frozen already
   */
  public static PlanRecord freeze(
      Connection connection, String name, String forecast, String digest, Instant now) {
    refuseFrozen(existing(connection, name), "the forecast stays as it was");
    Sql.execute(
        connection,
        "UPDATE plan SET forecast = ?, digest = ?, frozen_at = ? WHERE name = ?",
        forecast,
        digest,
        StoredMoment.text(now),
        name);
    return named(connection, name).orElseThrow();
  }

  private static PlanRecord existing(Connection connection, String name) {
    return named(connection, name)
        .orElseThrow(
            () ->
                new Refusal(
                    "There is no plan " + name + ".",
                    new Problem("plan", name, "the name of a plan that was saved")));
  }

  private static void refuseFrozen(PlanRecord plan, String done) {
    if (plan.frozenAt() != null) {
      throw new Refusal(
          "The plan " + plan.name() + " was frozen on " + plan.frozenAt() + "; " + done + ".",
          new Problem("plan", plan.name(), "a plan that is not frozen"));
    }
  }

  /** The lines of a plan's day, in the order of entering, corrected ones included. */
  public static List<TrackRun> runs(Connection connection, String plan) {
    return Sql.list(
        connection,
        "SELECT x.* FROM track_run x JOIN plan p ON p.id = x.plan_id WHERE p.name = ?"
            + " ORDER BY x.id",
        Plans::run,
        plan);
  }

  /**
   * Enters a run, or a correction of one.
   *
   * @param corrects the line that it corrects; null when it is a run of its own
   * @throws Refusal when there is no such plan or line
   */
  public static TrackRun enter(
      Connection connection, String plan, LoggedRun run, Long corrects, Instant now) {
    int id = existing(connection, plan).id();
    if (corrects != null
        && runs(connection, plan).stream().noneMatch(line -> line.id() == corrects)) {
      throw new Refusal(
          "The plan " + plan + " has no line " + corrects + "; nothing was entered.",
          new Problem("corrects", corrects.toString(), "the number of a line of this day"));
    }
    Sql.execute(
        connection,
        "INSERT INTO track_run (plan_id, entered_at, corrects_id, discipline, sequence, model, role,"
            + " run, from_kmh, to_kmh, distance_m, time_s, level_db, value, unit, surface_c, air_c,"
            + " remark) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        id,
        StoredMoment.text(now),
        corrects,
        run.discipline(),
        run.sequence(),
        run.model(),
        run.role().word(),
        run.run(),
        run.fromKmh(),
        run.toKmh(),
        run.distanceM(),
        run.timeS(),
        run.levelDb(),
        run.value(),
        run.unit() == null ? null : run.unit().symbol(),
        run.surfaceC(),
        run.airC(),
        run.remark());
    List<TrackRun> lines = runs(connection, plan);
    return lines.get(lines.size() - 1);
  }

  /** The disciplines that were given up, with the reason, by key. */
  public static Map<String, String> aborted(Connection connection, String plan) {
    Map<String, String> aborted = new LinkedHashMap<>();
    Sql.forEach(
        connection,
        "SELECT x.discipline, x.reason FROM track_abort x JOIN plan p ON p.id = x.plan_id"
            + " WHERE p.name = ? ORDER BY x.id",
        row -> aborted.put(row.getString(1), row.getString(2)),
        plan);
    return aborted;
  }

  /** Gives a discipline up. */
  public static void abort(
      Connection connection, String plan, String discipline, String reason, Instant now) {
    Sql.execute(
        connection,
        "INSERT INTO track_abort (plan_id, discipline, reason, entered_at) VALUES (?, ?, ?, ?)",
        existing(connection, plan).id(),
        discipline,
        reason,
        StoredMoment.text(now));
  }

  private static PlanRecord plan(ResultSet row) throws SQLException {
    String frozen = row.getString("frozen_at");
    return new PlanRecord(
        row.getInt("id"),
        row.getString("name"),
        row.getString("plan"),
        row.getString("forecast"),
        row.getString("digest"),
        frozen == null ? null : Instant.parse(frozen));
  }

  private static TrackRun run(ResultSet row) throws SQLException {
    long corrects = row.getLong("corrects_id");
    String unit = row.getString("unit");
    return new TrackRun(
        row.getLong("id"),
        Instant.parse(row.getString("entered_at")),
        corrects == 0 ? null : (Long) corrects,
        new LoggedRun(
            row.getString("discipline"),
            row.getInt("sequence"),
            row.getString("model"),
            LoggedRun.Role.ofWord(row.getString("role")).orElseThrow(),
            Sql.integer(row, "run"),
            Sql.real(row, "from_kmh"),
            Sql.real(row, "to_kmh"),
            Sql.real(row, "distance_m"),
            Sql.real(row, "time_s"),
            Sql.real(row, "level_db"),
            Sql.real(row, "value"),
            unit == null ? null : Unit.ofSymbol(unit).orElseThrow(),
            Sql.real(row, "surface_c"),
            Sql.real(row, "air_c"),
            row.getString("remark"),
            null));
  }
}
