package org.griplore.store.archive;

import java.sql.Connection;
import java.util.List;

/** What is given away of how logs were reduced: reductions, their sets and the sets' runs. */
final class ReductionTables {
  private final DenseNumbers reports;
  private final DenseNumbers reductions;
  private final DenseNumbers sets;

  ReductionTables(Connection connection) {
    reports = DenseNumbers.ofTable(connection, "report");
    reductions = DenseNumbers.ofTable(connection, "reduction");
    sets = DenseNumbers.ofTable(connection, "reduced_set");
  }

  List<TableQuery> all() {
    return List.of(reductions(), sets(), runs());
  }

  private TableQuery reductions() {
    return new TableQuery(
            "reductions",
            "Reductions",
            "How a log's runs of one discipline became results; lists stand a line each.")
        .numbered("reduction", reductions::of, "Its number, in the order of adding")
        .always()
        .numbered("report", reports::of, "The report")
        .always()
        .to("reports", "report")
        .text("discipline", "What was measured")
        .always()
        .to("disciplines", "discipline")
        .text("measure", "What runs were averaged in")
        .always()
        .text("unit", "Unit of means, references, level and steps; empty for plain numbers")
        .flag("by_ratio", "Whether sets are compared by ratio, else by difference")
        .text("better", "Which way is better in that unit")
        .always()
        .oneOf(List.of("low", "high"))
        .text("coast_by", "Class of tyre whose coast-by correction the levels had")
        .real("from_kmh", "Nominal speed at the start of the window, km/h")
        .real("to_kmh", "Nominal speed at its end, km/h")
        .real("level", "The reference's figure that results stand on")
        .text("level_words", "What that level means")
        .always()
        .text("trace", "What the reference did over the day")
        .always()
        .real("slope", "Change of the reference a place")
        .real("trend_p", "p of the trend")
        .integer("step_after", "Sequence number after which a step fits best")
        .real("step_size", "Later mean less earlier mean")
        .real("step_p", "p of the step, corrected for the search")
        .text("cycles", "The cycles with the reference's drift")
        .text("limits", "The limits it was judged by")
        .key("reduction")
        .from(
            "SELECT x.id, x.report, d.key, x.measure, u.symbol, x.by_ratio, lower(x.better),"
                + " x.coast_by, x.from_kmh, x.to_kmh, x.level, x.level_words, x.trace, x.slope,"
                + " x.trend_p, x.step_after, x.step_size, x.step_p, x.cycles, x.limits"
                + " FROM reduction x JOIN discipline d ON d.id = x.discipline"
                + " JOIN unit u ON u.id = x.unit ORDER BY x.id");
  }

  private TableQuery sets() {
    return new TableQuery(
            "reduced_sets",
            "Reduced sets",
            "One set of tyres at its place in the order of the day.")
        .numbered("reduced_set", sets::of, "Its number, in the order of adding")
        .always()
        .numbered("reduction", reductions::of, "The reduction")
        .always()
        .to("reductions", "reduction")
        .integer("sequence", "Place in the order of the day, from 1")
        .always()
        .text("model", "The model that it counts for")
        .always()
        .to("models", "model")
        .text("role", "What the set is there for")
        .always()
        .oneOf(List.of("reference", "candidate"))
        .integer("cycle", "The cycle a candidate was driven in, from 1")
        .real("mean", "Mean of the runs that count")
        .real("deviation", "Their standard deviation (n - 1)")
        .integer("counted", "How many runs count")
        .always()
        .real("reference", "The reference at a candidate's place")
        .text("reference_words", "How that reference is made up")
        .real("effect", "Natural logarithm of the ratio to it, or the difference")
        .real("effect_error", "Its standard error")
        .flag("valid", "Whether it stands under the limits")
        .text("standing", "The same in words")
        .always()
        .text("reasons", "The limits that were broken")
        .key("reduced_set")
        .from(
            "SELECT x.id, x.reduction, x.sequence, coalesce(s.name, m.name), lower(x.role),"
                + " x.cycle, x.mean, x.deviation, x.counted, x.reference, x.reference_words,"
                + " x.effect, x.effect_error, x.valid, x.standing, x.reasons FROM reduced_set x"
                + " JOIN model m ON m.id = x.model LEFT JOIN model s ON s.id = m.same_as"
                + " ORDER BY x.id");
  }

  private TableQuery runs() {
    return new TableQuery(
            "reduced_runs", "Reduced runs", "What one logged run went into its set's mean with.")
        .numbered("reduced_set", sets::of, "The set")
        .always()
        .to("reduced_sets", "reduced_set")
        .integer("position", "Place of the run within the set, from 1")
        .always()
        .numbered("report", reports::of, "The report that the run stands in")
        .always()
        .integer("run_position", "Place of the run within that report, as in the table of runs")
        .always()
        .real("figure", "What it measured, in the reduction's unit")
        .text("left_out", "Why it does not count")
        .text("flag", "What is odd about it, though it counts")
        .key("reduced_set", "position")
        .from(
            "SELECT x.reduced_set,"
                + " row_number() OVER (PARTITION BY x.reduced_set ORDER BY x.id), n.report, n.at,"
                + " x.figure, x.left_out, x.flag FROM reduced_run x JOIN (SELECT id, report,"
                + " row_number() OVER (PARTITION BY report ORDER BY id) AS at FROM run) n"
                + " ON n.id = x.run ORDER BY x.reduced_set, x.id");
  }
}
