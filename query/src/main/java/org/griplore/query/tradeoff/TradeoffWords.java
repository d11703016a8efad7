package org.griplore.query.tradeoff;

import java.util.List;
import java.util.Locale;

/** The answer in words: what the correlations say, and where they say nothing. */
final class TradeoffWords {
  private TradeoffWords() {}

  static String summary(
      String x, String y, Relation relation, List<TradeoffRow> rows, List<TradeoffStep> steps) {
    long front = rows.stream().filter(TradeoffRow::front).count();
    long both = steps.stream().filter(step -> Boolean.TRUE.equals(step.improvedBoth())).count();
    return "%s and %s: inside %s with both, %s; between %s, %s; between %s from one generation to the next, %s. %s on the front%s."
        .formatted(
            x,
            y,
            counted(relation.tests(), "test"),
            told(relation.withinTests(), relation.low(), relation.high()),
            counted(relation.models(), "model"),
            told(
                relation.betweenModels(),
                relation.betweenModelsLow(),
                relation.betweenModelsHigh()),
            counted(relation.steps(), "step"),
            told(relation.betweenSteps(), relation.betweenStepsLow(), relation.betweenStepsHigh()),
            front == 1 ? "1 model is" : front + " models are",
            steps.isEmpty()
                ? ""
                : "; %d of %s improved both, each by its interval"
                    .formatted(both, counted(steps.size(), "step")));
  }

  /** A correlation in words; an interval that holds zero cannot be told from none. */
  static String told(Double r, Double low, Double high) {
    if (r == null) {
      return "no correlation can be worked out";
    }
    String figure = number(r);
    if (low == null) {
      return "a correlation of " + figure + " without an interval, so nothing is claimed";
    }
    String interval = " (95 % interval " + number(low) + " to " + number(high) + ")";
    if (low <= 0 && high >= 0) {
      return "a correlation of " + figure + interval + ", which cannot be told from none";
    }
    return (r < 0 ? "a trade-off, correlation " : "both go together, correlation ")
        + figure
        + interval;
  }

  private static String counted(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%+.2f", value).replace('-', '\u2212');
  }
}
