package org.griplore.query.makers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Exclusion;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.option.Choices;
import org.griplore.query.question.QueryContext;

/**
 * What every answer says of reports that makers supplied: that they were left out, that nobody else
 * tells anything, and wherever a maker's figure stands, what such figures have been worth.
 */
public final class MakersBeside {
  private MakersBeside() {}

  /** An answer with what is to be said of makers' reports. */
  public static <R> Answer<R> told(Answer<R> answer, QueryContext context, Choices choices) {
    boolean asked = choices.all("source").contains("maker");
    long left =
        answer.excluded().stream()
            .filter(exclusion -> exclusion.reason().equals(Filter.BY_MAKER))
            .mapToLong(Exclusion::count)
            .sum();
    if (!asked && left == 0) {
      return answer;
    }
    String sentence =
        asked || answer.hasEvidence()
            ? ""
            : "Reports that makers supplied alone tell of it: `--source maker` shows what they say.";
    List<String> caveats = new ArrayList<>();
    if (!asked && answer.hasEvidence()) {
      caveats.add(
          "Reports supplied by makers are left out; `--source maker` shows what they say, and"
              + " `--source own --source independent --source maker` sets all together.");
    }
    caveats.addAll(worth(context, choices));
    return answer.adding(sentence, caveats);
  }

  /** What makers' figures have been worth in the disciplines asked for by name. */
  private static List<String> worth(QueryContext context, Choices choices) {
    if (!choices.offers("segment")) { // a question about words, not about figures
      return List.of();
    }
    Evidence evidence = context.evidence();
    Filter every = new Filter(choices.without("source"), evidence);
    Set<String> disciplines = new LinkedHashSet<>();
    for (String given : choices.all("discipline")) {
      for (String key : given.split(",")) {
        if (evidence.discipline(key.strip()) >= 0 && !key.strip().equals("overall")) {
          disciplines.add(key.strip());
        }
      }
    }
    return disciplines.stream()
        .map(key -> MakerWorth.of(evidence, key, every, context.networks()))
        .flatMap(Optional::stream)
        .map(MakerWorth::words)
        .toList();
  }
}
