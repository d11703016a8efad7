package org.griplore.query.browse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.NameKey;

/** Lists what the user decided on names and descent, the newest first. */
public final class DecisionsQuestion implements Question<Decision> {
  @Override
  public String kind() {
    return "decisions";
  }

  @Override
  public String purpose() {
    return "What was decided on names and models' descent, and when";
  }

  @Override
  public String example() {
    return "decisions --which ever";
  }

  @Override
  public List<Option> options() {
    return List.of(
        Option.once(
                "which", "WHICH", "decisions that stand, or all that were ever made", "standing")
            .oneOf(List.of("standing", "ever")),
        Option.once("name", "NAME", "only decisions on this name", null));
  }

  @Override
  public Answer<Decision> answer(QueryContext context, Choices choices) {
    boolean ever = "ever".equals(choices.text("which"));
    String name = choices.text("name");
    Exclusions excluded = new Exclusions();
    List<Decision> all =
        new ArrayList<>(ever ? context.archive().decisionHistory() : context.archive().decisions());
    Collections.reverse(all);
    List<Decision> rows = new ArrayList<>();
    for (Decision decision : all) {
      if (name == null || decision.key().equals(NameKey.of(name))) {
        rows.add(decision);
      } else {
        excluded.add("decisions on other names");
      }
    }
    return Answer.to(
            new Inquiry(
                kind(),
                ever ? "What was ever decided on names?" : "What is decided on names?",
                choices.given()))
        .summary(rows.size() == 1 ? "One decision." : rows.size() + " decisions.")
        .columns(columns())
        .rows(rows)
        .excluded(excluded.list())
        .build();
  }

  @Override
  public List<Column<Decision>> columns() {
    return List.of(
        Column.of("name", "Name", Format.TEXT, Decision::name).means("The name as written."),
        Column.of("decision", "Decided", Format.TEXT, Decision::verb)
            .means("What was decided on it."),
        Column.of("value", "Model or value", Format.TEXT, Decision::value)
            .means("The model it means, or the value it has."),
        Column.<Decision>of(
                "decidedAt", "On", Format.DATE, row -> row.decidedAt().toString().substring(0, 10))
            .means("The day of the decision."),
        Column.<Decision>of(
                "words", "Why", Format.TEXT, row -> row.words().isEmpty() ? null : row.words())
            .means("Why, in the words of who decided."));
  }
}
