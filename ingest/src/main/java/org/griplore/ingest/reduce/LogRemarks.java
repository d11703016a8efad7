package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.griplore.ingest.reduce.limit.Remark;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.ingest.reduce.run.SpeedCorrection;
import org.griplore.ingest.reduce.run.Window;
import org.griplore.ingest.reduce.sample.GrubbsRule;
import org.griplore.store.vocabulary.LoggedRun;

/** Collects what a reader of a reduced log must know. */
final class LogRemarks {
  private final RunMeasure measure;
  private final List<Remark> remarks = new ArrayList<>();

  LogRemarks(RunMeasure measure) {
    this.measure = measure;
  }

  List<Remark> all() {
    return remarks;
  }

  void add(List<Remark> more) {
    remarks.addAll(more);
  }

  void windowTaken(Window window) {
    remarks.add(
        new Remark(
            Remark.Kind.TAKEN_AS,
            null,
            "no nominal speeds given",
            window == null
                ? "the logged speeds give none; results stay decelerations"
                : "taken as " + window.words() + ", the mean of the logged speeds to 5 km/h"));
  }

  void unitTaken(List<LoggedRun> runs) {
    if (measure.kind() != RunMeasure.Kind.VALUE) {
      return;
    }
    List<LoggedRun> bare =
        runs.stream().filter(run -> run.value() != null && run.unit() == null).toList();
    if (!bare.isEmpty()) {
      remarks.add(
          new Remark(
              Remark.Kind.TAKEN_AS,
              bare.get(0).cell(),
              bare.size() + " values without a unit, the first at " + RunPosition.of(bare.get(0)),
              "taken as " + measure.unit().symbol()));
    }
  }

  void noSurfaceTemperature(LoggedRun first) {
    remarks.add(
        new Remark(
            Remark.Kind.TAKEN_AS,
            first.cell(),
            "sequence " + first.sequence() + ": passes without a surface temperature",
            "levels of this set are not corrected to 20 \u00b0C of the road"));
  }

  void deviations(List<SetStatistics> sets, Window window) {
    for (SetStatistics set : sets) {
      for (SetStatistics.SetRun of : set.runs()) {
        LoggedRun run = of.run();
        if (of.leftOut() != null) {
          continue;
        }
        double deviation = SpeedCorrection.deviation(run.fromKmh(), run.toKmh(), window);
        if (Math.abs(deviation) > SpeedCorrection.SMALL_DEVIATION) {
          remarks.add(
              new Remark(
                  Remark.Kind.SPEED_DEVIATION,
                  run.cell(),
                  String.format(
                      Locale.ROOT,
                      "%s: %s to %s km/h, v1^2 - v2^2 %.1f %% off %s",
                      RunPosition.of(run),
                      run.fromKmh(),
                      run.toKmh(),
                      100 * deviation,
                      window.words()),
                  "corrected by the square law all the same, which is meant for deviations up to"
                      + " 4 %"));
        }
      }
    }
  }

  void openEnd(ReferenceCycle cycle, boolean anyReference, ReductionOptions.OpenEnd rule) {
    if (cycle.isClosed()) {
      return;
    }
    LoggedRun first = cycle.candidates().get(0).first();
    String missing =
        !anyReference
            ? "no reference in the log"
            : cycle.opening() == null ? "no opening reference" : "no closing reference";
    String found = "cycle " + cycle.number() + " (" + cycle.order() + "): " + missing;
    if (rule == ReductionOptions.OpenEnd.REFUSE) {
      throw RunPosition.refusal(
          RunPosition.of(first), found, "the reference before and after the candidates");
    }
    remarks.add(
        new Remark(
            Remark.Kind.REFERENCE_MISSING,
            first.cell(),
            found,
            anyReference
                ? "the nearest measurement of the reference was taken for each candidate; the"
                    + " standard error is widened by the day's drift per place where one was seen"
                : "the runs were averaged as they are; a drift of the track stays in them"));
  }

  void sets(List<SetStatistics> sets) {
    for (SetStatistics set : sets) {
      for (SetStatistics.SetRun run : set.runs()) {
        if (run.leftOut() != null) {
          remarks.add(
              new Remark(
                  Remark.Kind.LEFT_OUT,
                  run.run().cell(),
                  RunPosition.of(run.run()) + ": " + run.leftOut(),
                  "it is kept, but does not count"));
        }
      }
      List<SetStatistics.SetRun> counted =
          set.runs().stream().filter(run -> run.leftOut() == null).toList();
      for (GrubbsRule.Flag flag : set.outliers()) {
        LoggedRun run = counted.get(flag.index()).run();
        remarks.add(
            new Remark(
                Remark.Kind.OUTLIER,
                run.cell(),
                String.format(
                    Locale.ROOT,
                    "%s: %s, G = %.3f of n = %d, p = %.4f",
                    RunPosition.of(run),
                    flag.degree().name().toLowerCase(Locale.ROOT),
                    flag.g(),
                    flag.n(),
                    flag.p()),
                "it counts; call it invalid in its remark if it is"));
      }
      if (!set.isUsable()) {
        remarks.add(
            new Remark(
                Remark.Kind.LEFT_OUT,
                set.first().cell(),
                "sequence " + set.sequence() + ", " + set.model() + ": no run counts",
                set.isReference()
                    ? "it is no reference; its place in the order counts"
                    : "it has no result; its place in the order counts"));
      }
    }
  }

  void trace(ControlTrace trace) {
    if (trace.verdict() == ControlTrace.Verdict.STEP) {
      remarks.add(
          new Remark(
              Remark.Kind.STEP,
              null,
              String.format(
                  Locale.ROOT,
                  "the reference steps by %.4g (%s) after place %d, p = %.4f against %.4f for a"
                      + " trend",
                  trace.stepSize(),
                  measure.kind().words(),
                  trace.stepAfter(),
                  trace.stepP(),
                  trace.trendP()),
              trace.verdict().words()));
    }
  }

  void uncertainties(List<ReducedResult> results) {
    for (ReducedResult result : results) {
      boolean oneSided = false;
      for (SetResult set : result.used()) {
        oneSided |=
            set.reference().basis() == LocalReference.Basis.ONE_SIDED
                && set.effect().components().stream()
                    .noneMatch(c -> c.source().startsWith("drift"));
        if (set.set().count() == 1) {
          uncertain(
              result,
              "a set of one run (sequence " + set.set().sequence() + ")",
              "it has no spread of its own; the spread of the log's other sets stands in where"
                  + " there is one");
        }
      }
      if (oneSided) {
        uncertain(
            result,
            "a single reference measurement",
            "the drift of the track was not measured: the standard error holds the scatter of the"
                + " runs only");
      }
      if (result.isCorrected() && result.effect().standardError() == null) {
        uncertain(result, "no set of two runs", "no standard error can be given");
      }
    }
  }

  private void uncertain(ReducedResult result, String found, String meaning) {
    remarks.add(
        new Remark(
            Remark.Kind.UNCERTAINTY,
            result.sets().get(0).set().first().cell(),
            result.model() + ": " + found,
            meaning));
  }
}
