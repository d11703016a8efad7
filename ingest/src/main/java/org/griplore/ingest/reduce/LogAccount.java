package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.griplore.ingest.reduce.limit.Limits;
import org.griplore.ingest.reduce.limit.Standing;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.ReducedSet;
import org.griplore.store.vocabulary.Reduction;

/** What is kept of a reduced log, so that a reader can judge its results. */
public final class LogAccount {
  private final ReducedLog log;
  private final LimitCheck check;
  private final Map<Integer, SetResult> results = new HashMap<>();

  private LogAccount(ReducedLog log, Limits limits) {
    this.log = log;
    this.check = new LimitCheck(limits, log.measure());
    log.results().stream()
        .flatMap(result -> result.sets().stream())
        .forEach(set -> results.put(set.set().position(), set));
  }

  /**
   * The account of a log.
   *
   * @param options those it was reduced by
   */
  public static Reduction of(Discipline discipline, ReducedLog log, ReductionOptions options) {
    Limits limits = options.limits();
    LogAccount account = new LogAccount(log, limits);
    Window window = log.window();
    return new Reduction(
        discipline.key(),
        log.measure().kind().words(),
        log.figureUnit(),
        log.measure().byRatio(),
        log.measure().better(discipline),
        options.coastBy() == null ? null : options.coastBy().name(),
        window == null ? null : (Double) window.fromKmh(),
        window == null ? null : (Double) window.toKmh(),
        account.trace(log.trace()),
        log.level(),
        log.levelWords(),
        log.cycles().stream().map(account::cycle).toList(),
        limits.all().stream().map(limit -> limit.words() + ": " + limit.consequence()).toList(),
        log.sets().stream().map(account::set).toList());
  }

  private Reduction.Trace trace(ControlTrace trace) {
    return new Reduction.Trace(
        trace.verdict().words(),
        trace.line() == null ? null : (Double) trace.line().slope(),
        trace.trendP(),
        trace.stepAfter() == null
            ? null
            : (Integer) log.sets().get(trace.stepAfter() - 1).sequence(),
        trace.stepSize(),
        trace.stepP());
  }

  private String cycle(ReferenceCycle cycle) {
    Double drift = cycle.drift(log.measure());
    String change =
        drift == null
            ? "the drift of the reference is not known"
            : log.measure().byRatio()
                ? String.format(Locale.ROOT, "the reference changes by %.2f %%", 100 * drift)
                : String.format(
                    Locale.ROOT,
                    "the reference changes by %.2f %s",
                    drift,
                    log.figureUnit().symbol());
    String place =
        cycle.isClosed()
            ? "sequence " + cycle.opening().sequence() + " to " + cycle.closing().sequence()
            : "sequence " + cycle.candidates().get(0).sequence() + " on";
    return "cycle " + cycle.number() + ", " + place + ", " + cycle.order() + ": " + change;
  }

  private ReducedSet set(SetStatistics set) {
    SetResult result = results.get(set.position());
    Standing standing = result == null ? ofReference(set) : result.standing();
    Effect effect = result == null ? null : result.effect();
    return new ReducedSet(
        set.sequence(),
        set.model(),
        set.first().role(),
        result == null ? null : (Integer) result.cycle().number(),
        set.mean(),
        set.deviation(),
        set.count(),
        result == null ? null : result.reference().value(),
        result == null ? "" : result.reference().words(),
        effect == null ? null : (Double) effect.value(),
        effect == null ? null : effect.standardError(),
        standing.isValid() && set.isUsable(),
        set.isUsable() ? words(set, standing) : "no run counts",
        standing.reasons(),
        runs(set));
  }

  private Standing ofReference(SetStatistics set) {
    return set.isReference() ? check.ofReference(set, log.cycles()) : Standing.UNJUDGED;
  }

  private String words(SetStatistics set, Standing standing) {
    if (standing.isValid() && !check.judges()) {
      return "not judged: no limit for it is published that is known here";
    }
    return set.isReference() && !standing.isValid()
        ? "void: the reference breaks a limit, and with it its cycles"
        : standing.state().words();
  }

  private static List<ReducedSet.ReducedRun> runs(SetStatistics set) {
    List<ReducedSet.ReducedRun> runs = new ArrayList<>();
    int counted = 0;
    for (SetStatistics.SetRun run : set.runs()) {
      String flag = run.leftOut() == null ? flag(set, counted++) : null;
      runs.add(new ReducedSet.ReducedRun(run.run(), run.figure(), run.leftOut(), flag));
    }
    return runs;
  }

  private static String flag(SetStatistics set, int index) {
    return set.outliers().stream()
        .filter(flag -> flag.index() == index)
        .findFirst()
        .map(
            flag ->
                String.format(
                    Locale.ROOT,
                    "%s (Grubbs, p = %.3f); it counts",
                    flag.degree().name().toLowerCase(Locale.ROOT),
                    flag.p()))
        .orElse(null);
  }
}
