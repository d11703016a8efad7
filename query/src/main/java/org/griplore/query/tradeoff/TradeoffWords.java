package org.griplore.query.tradeoff;

import java.util.List;
import java.util.Locale;
import org.griplore.query.answer.Wording;

/** The answer in words: what the correlations say, and where they say nothing. */
final class TradeoffWords {
  private TradeoffWords() {}

  static String summary(
      String x, String y, Relation relation, List<TradeoffRow> rows, List<TradeoffStep> steps) {
    long front = rows.stream().filter(TradeoffRow::front).count();
    long both = steps.stream().filter(step -> Boolean.TRUE.equals(step.improvedBoth())).count();
    return "%s and %s inside %s: %s. Between %s: %s. Between %s of a generation: %s. %s on the front%s."
        .formatted(
            x.substring(0, 1).toUpperCase(Locale.ROOT) + x.substring(1),
            y,
            Wording.counted(relation.tests(), "test"),
            told(relation.withinTests(), relation.low(), relation.high()),
            Wording.counted(relation.models(), "model"),
            told(
                relation.betweenModels(),
                relation.betweenModelsLow(),
                relation.betweenModelsHigh()),
            Wording.counted(relation.steps(), "step"),
            told(relation.betweenSteps(), relation.betweenStepsLow(), relation.betweenStepsHigh()),
            front == 1 ? "1 model is" : front + " models are",
            steps.isEmpty()
                ? ""
                : "; %d of %s improved both, each by its interval"
                    .formatted(both, Wording.counted(steps.size(), "step")));
  }

  /** A correlation in words; an interval that holds zero cannot be told from none. */
  static String told(Double r, Double low, Double high) {
    if (r == null) {
      return "no correlation can be worked out";
    }
    if (low == null) {
      return "correlation " + Wording.signed(r, 2) + " without an interval, so nothing is claimed";
    }
    return "correlation %s%s, %s"
        .formatted(
            Wording.signed(r, 2),
            Wording.interval(low, high, 2),
            low <= 0 && high >= 0
                ? "cannot be told from none"
                : r < 0 ? "a trade-off" : "they go together");
  }
}
