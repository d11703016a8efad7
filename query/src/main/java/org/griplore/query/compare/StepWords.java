package org.griplore.query.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.GenerationsQuestion.GenerationRow;
import org.griplore.query.discipline.Difference;

/** Generation steps in honest sentences. */
final class StepWords {
  private StepWords() {}

  /** One honest sentence. */
  static String verdict(Difference step, Double percentile) {
    if (step.low() == null) {
      return "no interval: too few tests";
    }
    String place =
        percentile == null
            ? ""
            : String.format(
                Locale.ROOT, ", larger than %.0f of 10 steps", Math.floor(10 * percentile));
    if (step.low() > 0) {
      return "better" + place;
    }
    return (step.high() < 0 ? "worse" : "cannot be told from zero") + place;
  }

  static String summary(String names, boolean follows, List<GenerationRow> rows) {
    if (!follows) {
      return names
          + " has no step from one generation to the next: the lineage names no predecessor.";
    }
    if (rows.isEmpty()) {
      return "No tests connect the generations of " + names + ".";
    }
    if (rows.size() == 1) {
      return alone(rows.get(0));
    }
    Map<String, Integer> verdicts = new HashMap<>();
    rows.forEach(row -> verdicts.merge(word(row.step()), 1, Integer::sum));
    List<String> disciplines = rows.stream().map(GenerationRow::discipline).distinct().toList();
    return "%s steps in %s: %d better, %d worse, %d that cannot be told from zero."
        .formatted(
            disciplines.size() == 1
                ? rows.size()
                : rows.stream().map(row -> row.older() + row.newer()).distinct().count(),
            disciplines.size() == 1
                ? disciplines.get(0)
                : disciplines.size() + " disciplines, " + rows.size() + " comparisons",
            verdicts.getOrDefault("better", 0),
            verdicts.getOrDefault("worse", 0),
            verdicts.getOrDefault("open", 0));
  }

  private static String alone(GenerationRow row) {
    String interval = Wording.interval(row.step().low(), row.step().high(), 1);
    String pace =
        row.pace() == null || row.usualPace() == null
            ? ""
            : " That is %s a year, where %s is usual."
                .formatted(
                    Wording.difference(row.pace(), row.step().unit()),
                    Wording.difference(row.usualPace(), row.step().unit()));
    return "From %s to %s in %s: %s%s, %s.%s"
        .formatted(
            row.older(),
            row.newer(),
            row.discipline(),
            Wording.difference(row.step().difference(), row.step().unit()),
            interval,
            row.verdict(),
            pace);
  }

  private static String word(Difference step) {
    if (step.low() != null && step.low() > 0) {
      return "better";
    }
    return step.high() != null && step.high() < 0 ? "worse" : "open";
  }
}
