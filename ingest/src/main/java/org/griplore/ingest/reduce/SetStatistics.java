package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.griplore.ingest.reduce.run.RunMeasure;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.ingest.reduce.sample.GrubbsRule;
import org.griplore.ingest.reduce.sample.Moments;
import org.griplore.store.vocabulary.LoggedRun;

/**
 * One set of tyres at its place in the order of the day, and what its runs say together. Braking
 * runs are averaged as decelerations. A run is left out only when the log itself calls it invalid
 * or when it did not measure the figure; outliers are flagged and stay in.
 *
 * @param position place among the log's sets, from 1
 * @param runs all its runs, in the order of their numbers
 * @param mean mean of the counted figures; null when none counts
 * @param deviation standard deviation (n - 1); null for fewer than two
 * @param outliers flags by {@link GrubbsRule}; their index is the position among {@link #counted}
 */
public record SetStatistics(
    int position,
    List<SetRun> runs,
    Double mean,
    Double deviation,
    List<GrubbsRule.Flag> outliers) {
  private static final Pattern VOID =
      Pattern.compile(
          ".*\\b(invalid|void|aborted|ung\u00fcltig|abgebrochen|non valable|annul\u00e9|ogiltig)\\b.*",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS | Pattern.DOTALL);

  /**
   * A run of the set.
   *
   * @param figure what it measured; null when it did not
   * @param leftOut why it does not count; null when it does
   */
  public record SetRun(LoggedRun run, Double figure, String leftOut) {}

  /** Whether the log's remark calls the run invalid, in one of the languages logs are kept in. */
  public static boolean isVoid(LoggedRun run) {
    return run.remark() != null && VOID.matcher(run.remark()).matches();
  }

  /**
   * The set of these runs, which are of one place in the sequence.
   *
   * @throws org.griplore.store.vocabulary.Refusal when they name two tyres or two roles, or a
   *     figure cannot be
   */
  public static SetStatistics of(int position, List<LoggedRun> together, RunMeasure measure) {
    return of(position, together, measure.kind().words(), measure::figure);
  }

  static SetStatistics of(
      int position, List<LoggedRun> together, String what, Function<LoggedRun, Double> figureOf) {
    LoggedRun first = together.get(0);
    List<SetRun> runs = new ArrayList<>();
    List<Double> counted = new ArrayList<>();
    for (LoggedRun run : together) {
      if (!run.model().equals(first.model()) || run.role() != first.role()) {
        throw RunPosition.refusal(
            RunPosition.of(run),
            named(run),
            named(first) + " as in the other runs of sequence " + run.sequence());
      }
      SetRun judged = judged(run, what, figureOf);
      runs.add(judged);
      if (judged.leftOut() == null) {
        counted.add(judged.figure());
      }
    }
    double[] figures = counted.stream().mapToDouble(d -> d).toArray();
    Moments moments = figures.length == 0 ? null : Moments.of(figures);
    return new SetStatistics(
        position,
        List.copyOf(runs),
        moments == null ? null : (Double) moments.mean(),
        figures.length < 2 ? null : (Double) moments.deviation(),
        List.copyOf(GrubbsRule.flags(counted)));
  }

  private static SetRun judged(LoggedRun run, String what, Function<LoggedRun, Double> figureOf) {
    if (isVoid(run)) {
      return new SetRun(run, null, "the log calls it invalid: " + run.remark());
    }
    Double figure = figureOf.apply(run);
    return new SetRun(run, figure, figure == null ? "no " + what : null);
  }

  private static String named(LoggedRun run) {
    return run.role().name().toLowerCase(Locale.ROOT) + " " + run.model();
  }

  /** The figures that count, in the order of the runs. */
  public List<Double> counted() {
    return runs.stream()
        .filter(run -> run.leftOut() == null)
        .map(SetRun::figure)
        .filter(Objects::nonNull)
        .toList();
  }

  /** How many runs count. */
  public int count() {
    return counted().size();
  }

  /** Whether any run counts. */
  public boolean isUsable() {
    return mean != null;
  }

  /** Coefficient of variation sd / mean as a fraction; null for fewer than two runs. */
  public Double variation() {
    return deviation == null ? null : (Double) (deviation / mean);
  }

  /** Standard error of the mean, sd / sqrt(n); null for fewer than two runs. */
  public Double standardError() {
    return deviation == null ? null : (Double) (deviation / Math.sqrt(count()));
  }

  /** The first run, which stands for the set's place in the log. */
  public LoggedRun first() {
    return runs.get(0).run();
  }

  /** The log's number of the place. */
  public int sequence() {
    return first().sequence();
  }

  /** The tyre's model. */
  public String model() {
    return first().model();
  }

  /** Whether it is the reference set. */
  public boolean isReference() {
    return first().role() == LoggedRun.Role.REFERENCE;
  }
}
