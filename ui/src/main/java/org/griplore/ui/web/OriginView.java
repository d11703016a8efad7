package org.griplore.ui.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.browse.OriginQuestion.OriginRow;
import org.griplore.query.question.Desk;

/**
 * Cells of an answer in the source they stand in.
 *
 * @param surroundings one for each sheet that has one of the cells
 */
public record OriginView(List<Surroundings> surroundings) {
  static OriginView of(Answer<?> answer, Desk desk) {
    Map<String, List<OriginRow>> bySheet = new LinkedHashMap<>();
    for (Object row : answer.rows()) {
      OriginRow origin = (OriginRow) row;
      bySheet
          .computeIfAbsent(origin.sha256() + origin.sheet(), key -> new ArrayList<>())
          .add(origin);
    }
    return new OriginView(
        bySheet.values().stream()
            .map(cells -> Surroundings.of(cells, desk.archive().originals()))
            .toList());
  }
}
