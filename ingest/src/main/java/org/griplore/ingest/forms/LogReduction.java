package org.griplore.ingest.forms;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.ingest.reduce.LogAccount;
import org.griplore.ingest.reduce.ReducedLog;
import org.griplore.ingest.reduce.ReducedResult;
import org.griplore.ingest.reduce.ReductionOptions;
import org.griplore.ingest.reduce.RunReducer;
import org.griplore.ingest.reduce.SetResult;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Result;
import org.griplore.store.vocabulary.ResultCells;

/**
 * Reduces the runs of one discipline to results in its unit, and says how in the results' rule.
 * What a reader must know of them becomes findings; a log that cannot be reduced is one, too.
 */
final class LogReduction {
  private final Discipline discipline;
  private final List<LoggedRun> runs;
  private final SourceContext context;

  LogReduction(Discipline discipline, List<LoggedRun> runs, SourceContext context) {
    this.discipline = discipline;
    this.runs = runs;
    this.context = context;
  }

  /**
   * What came out of the runs.
   *
   * @param results the candidates' results by model
   * @param account how they came about; null when the runs could not be reduced
   */
  record Outcome(Map<String, Result> results, Reduction account) {}

  Outcome outcome() {
    ReductionOptions options;
    Optional<ReducedLog> log;
    try {
      options = ReductionSettings.of(discipline.key(), context.given());
      log = RunReducer.reduce(runs, discipline, options);
    } catch (Refusal refusal) {
      refused(refusal);
      return new Outcome(Map.of(), null);
    }
    Map<String, Result> results = new LinkedHashMap<>();
    log.ifPresent(
        reduced -> {
          reduced.remarks().forEach(this::remarked);
          for (ReducedResult result : reduced.results()) {
            results.put(result.model(), result(result, reduced.levelWords()));
            result.sets().stream().filter(set -> !set.standing().isValid()).forEach(this::voided);
          }
        });
    return new Outcome(
        results, log.map(reduced -> LogAccount.of(discipline, reduced, options)).orElse(null));
  }

  private Result result(ReducedResult reduced, String levelWords) {
    return new Result(
        discipline.key(),
        reduced.corrected(),
        reduced.unit(),
        reduced.spread(),
        reduced.runs(),
        null,
        ResultCells.ofValue(reduced.used().get(0).set().first().cell()),
        rule(reduced, levelWords),
        reduced.steps());
  }

  private static String rule(ReducedResult reduced, String levelWords) {
    String sets =
        reduced.used().size() == 1 ? "" : "mean of " + reduced.used().size() + " sets; first: ";
    SetResult first = reduced.used().get(0);
    String steps =
        "mean of %d runs (%s)%s"
            .formatted(
                first.set().count(),
                reduced.measure().kind().words(),
                reduced.isCorrected()
                    ? "; reference " + first.reference().words() + "; " + levelWords
                    : "");
    String uncorrected = reduced.isCorrected() ? "" : "; no reference set, not corrected";
    String standing =
        reduced.isValid() ? "" : "; " + reduced.used().get(0).standing().state().words();
    return sets + steps + uncorrected + standing;
  }

  private void remarked(Remark remark) {
    String remedy =
        switch (remark.kind()) {
          case REFERENCE_MISSING ->
              "log the reference set before the first and after the last candidate";
          case TAKEN_AS -> "state it in the log or beside it, like `window: 80-20`";
          case SPEED_DEVIATION -> "check the speeds, or call the run invalid in its remark";
          case LEFT_OUT -> "change the remark or fill the figure if the run is to count";
          case OUTLIER -> "call the run invalid in its remark if it is";
          case STEP -> "drive the candidates around the step again, or read them with care";
          case LIMIT, UNCERTAINTY -> null;
        };
    if (remedy != null) {
      finding(Finding.Kind.ASSUMED, remark, remedy);
    }
  }

  private void finding(Finding.Kind kind, Remark remark, String remedy) {
    context
        .receiver()
        .finding(
            new Finding(
                kind,
                remark.cell(),
                discipline.key() + ": " + remark.found(),
                remark.meaning(),
                remedy));
  }

  private void voided(SetResult set) {
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.ASSUMED,
                set.set().first().cell(),
                discipline.key() + ": " + String.join("; ", set.standing().reasons()),
                set.standing().state().words() + "; the result is kept",
                "drive the set again, or take the result with care"));
  }

  private void refused(Refusal refusal) {
    Problem problem =
        refusal.problems().isEmpty()
            ? new Problem(discipline.key(), refusal.sentence(), "a log that can be reduced")
            : refusal.problems().get(0);
    context
        .receiver()
        .finding(
            new Finding(
                Finding.Kind.CONFLICT,
                null,
                discipline.key() + ": " + problem.where() + ": " + problem.found(),
                problem.expected() + "; the runs are kept, but were not reduced to results",
                "correct the log and add it again"));
  }
}
