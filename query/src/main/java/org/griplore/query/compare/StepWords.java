package org.griplore.query.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.GenerationsQuestion.GenerationRow;
import org.griplore.query.discipline.Difference;
import org.griplore.query.discipline.HangsOn;
import org.griplore.query.discipline.StrongestRemoval;

/** Generation steps in honest sentences. */
final class StepWords {
  private StepWords() {}

  /** One honest sentence. */
  static String verdict(Difference step, Double percentile, List<StrongestRemoval> hangsOn) {
    return verdict(step, percentile)
        + HangsOn.telling(hangsOn)
            .filter(StrongestRemoval::sentenceChanges)
            .map(removal -> ". " + removal.words(step.unit()).replaceFirst("\\.$", ""))
            .orElse("");
  }

  private static String verdict(Difference step, Double percentile) {
    if (step.low() == null) {
      return "no interval for " + DifferenceWords.ANOTHER + ": too few tests";
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
    rows.forEach(row -> verdicts.merge(DifferenceWords.verdict(row.step()), 1, Integer::sum));
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
    String pace =
        row.pace() == null || row.usualPace() == null
            ? ""
            : " That is %s a year, where %s is usual."
                .formatted(
                    Wording.difference(row.pace(), row.step().unit()),
                    Wording.difference(row.usualPace(), row.step().unit()));
    return "From %s to %s in %s: %s%s%s.%s"
        .formatted(
            row.older(),
            row.newer(),
            row.discipline(),
            DifferenceWords.amount(row.step()),
            DifferenceWords.intervals(row.step()),
            more(row.verdict()),
            pace);
  }

  /** What a verdict says beyond better or worse, which the amount says already. */
  private static String more(String verdict) {
    String rest = verdict.replaceFirst("^(better|worse)(, )?", "");
    return rest.isEmpty() || rest.startsWith(".") ? rest : ", " + rest;
  }
}
