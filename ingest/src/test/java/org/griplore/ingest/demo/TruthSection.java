package org.griplore.ingest.demo;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.griplore.store.scenario.DisciplineTruth;
import org.griplore.store.scenario.Scenario;
import org.griplore.store.scenario.TrueStep;
import org.griplore.store.vocabulary.Scale;

/** The stated truth as the tables of the demo archive's README. */
final class TruthSection {
  private static final List<String> SHOWN =
      List.of(
          "wet-braking",
          "dry-braking",
          "snow-braking",
          "rolling-resistance",
          "straight-aquaplaning",
          "exterior-noise",
          "comfort");

  private final Scenario scenario = Scenario.stated();
  private final StringBuilder b = new StringBuilder();

  /** Markdown, ending with a newline. */
  static String markdown() {
    TruthSection section = new TruthSection();
    section.disciplines();
    section.steps();
    section.tradeOff();
    return section.b.toString();
  }

  private void disciplines() {
    b.append("| discipline | unit | better | usual gain | sd of gains | heterogeneity sd | ");
    b.append("sd of a run | runs | all-season | winter |\n");
    b.append("| --- | --- | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |\n");
    for (DisciplineTruth d : scenario.disciplines()) {
      Function<Double, String> f = x -> effect(d.scale(), x);
      b.append("| ").append(d.key()).append(" | ").append(d.unit().symbol()).append(" | ");
      b.append(d.better().name().toLowerCase(Locale.ROOT)).append(" | ");
      b.append(f.apply(d.stepMean())).append(" | ").append(f.apply(d.stepSd())).append(" | ");
      b.append(f.apply(d.heterogeneitySd())).append(" | ").append(f.apply(d.repeatability()));
      b.append(" | ").append(d.runs()).append(" | ").append(f.apply(d.allSeason())).append(" | ");
      b.append(f.apply(d.winter())).append(" |\n");
    }
  }

  private void steps() {
    b.append("\nTrue steps from one generation to the next:\n\n| older | newer |");
    SHOWN.forEach(key -> b.append(' ').append(key).append(" |"));
    b.append("\n| --- | --- |").append(" ---: |".repeat(SHOWN.size())).append('\n');
    List<TrueStep> steps = scenario.steps();
    steps.stream()
        .filter(s -> s.discipline().equals(SHOWN.get(0)))
        .forEach(
            s -> {
              b.append("| ").append(s.older()).append(" | ").append(s.newer()).append(" |");
              for (String key : SHOWN) {
                TrueStep step = scenario.step(s.older(), s.newer(), key);
                b.append(' ').append(effect(step.scale(), step.step())).append(" |");
              }
              b.append('\n');
            });
  }

  private void tradeOff() {
    List<TrueStep> steps = scenario.steps();
    double[] wet = of(steps, "wet-braking");
    double[] rolling = of(steps, "rolling-resistance");
    b.append("\nWet braking against rolling resistance: gains are drawn with correlation ");
    b.append(String.format(Locale.ROOT, "%.1f", Scenario.TRADE_OFF));
    b.append("; over the ").append(wet.length).append(" true steps above it is ");
    b.append(String.format(Locale.ROOT, "%.2f", correlation(wet, rolling))).append(".\n");
  }

  private static double[] of(List<TrueStep> steps, String discipline) {
    return steps.stream()
        .filter(s -> s.discipline().equals(discipline))
        .mapToDouble(TrueStep::step)
        .toArray();
  }

  /** Ratio effects as 100 times the log ratio, others in their unit. */
  private static String effect(Scale scale, double x) {
    String number = String.format(Locale.ROOT, "%.2f", scale == Scale.RATIO ? 100 * x : x);
    String unit =
        switch (scale) {
          case RATIO -> "";
          case LEVEL -> " dB";
          case POINTS -> " pt";
        };
    return (number.equals("-0.00") ? "0.00" : number) + unit;
  }

  private static double correlation(double[] x, double[] y) {
    double mx = java.util.Arrays.stream(x).average().orElseThrow();
    double my = java.util.Arrays.stream(y).average().orElseThrow();
    double xy = 0;
    double xx = 0;
    double yy = 0;
    for (int i = 0; i < x.length; i++) {
      xy += (x[i] - mx) * (y[i] - my);
      xx += (x[i] - mx) * (x[i] - mx);
      yy += (y[i] - my) * (y[i] - my);
    }
    return xy / Math.sqrt(xx * yy);
  }
}
