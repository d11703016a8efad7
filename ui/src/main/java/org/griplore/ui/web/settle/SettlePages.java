package org.griplore.ui.web.settle;

import io.javalin.http.Context;
import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.griplore.ingest.decide.DescentDecisions;
import org.griplore.ingest.decide.NameDecisions;
import org.griplore.query.Questions;
import org.griplore.query.browse.LineageQuestion;
import org.griplore.query.question.QueryContext;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.gate.WriteGate;
import org.griplore.ui.web.link.Addresses;

/** Takes decisions on names and descent by the forms of their pages. */
public final class SettlePages {
  private static final String TAKE_BACK = "undecided";

  private final QueryContext queryContext;
  private final Clock clock;

  public SettlePages(QueryContext queryContext, Clock clock) {
    this.queryContext = queryContext;
    this.clock = clock;
  }

  /** Decides on a name, and leads back to the names. */
  public void settle(Context context) {
    NameDecisions decisions = new NameDecisions(queryContext.archive(), clock);
    String words = field(context, "because");
    String model = field(context, "same-as");
    String decision = field(context, "decision");
    if (decision.equals("rest-are-new")) {
      decisions.restAreOwn(words);
      WriteGate.lead(context, "/settle");
      return;
    }
    String name = needed(context, "name");
    if (!model.isEmpty()) {
      decisions.sameAs(List.of(name), model, words);
    } else if (decision.equals("new")) {
      decisions.own(List.of(name), words);
    } else if (decision.equals(TAKE_BACK)) {
      decisions.takeBack(List.of(name), words);
    } else {
      needed(context, "same-as");
    }
    WriteGate.lead(context, "/settle");
  }

  /** Decides on a model's descent: what differs from what holds, or a topic to take back. */
  public void descent(Context context) {
    String model = needed(context, "model");
    String takenBack = field(context, TAKE_BACK);
    DescentDecisions.Wanted wanted =
        takenBack.isEmpty()
            ? new DescentDecisions.Wanted(changed(context, model), List.of())
            : new DescentDecisions.Wanted(Map.of(), Topic.ofWord(takenBack).stream().toList());
    DescentDecisions decisions = new DescentDecisions(queryContext.archive(), clock);
    decisions.decide(model, wanted, field(context, "because"));
    WriteGate.lead(context, Addresses.of("lineage", Map.of("model", List.of(model))));
  }

  private Map<Topic, String> changed(Context context, String model) {
    Map<Topic, String> changed = new EnumMap<>(Topic.class);
    for (Object row :
        Questions.ask(new LineageQuestion(), queryContext, Map.of("model", List.of(model)))
            .rows()) {
      LineageQuestion.Fact fact = (LineageQuestion.Fact) row;
      String sent = context.formParam(fact.topic().word());
      String wanted = sent == null || sent.isBlank() ? null : sent.strip();
      if (sent != null && !Objects.equals(wanted, fact.value())) {
        changed.put(fact.topic(), wanted);
      }
    }
    return changed;
  }

  private static String field(Context context, String name) {
    String value = context.formParam(name);
    return value == null ? "" : value.strip();
  }

  private static String needed(Context context, String name) {
    String value = field(context, name);
    if (value.isEmpty()) {
      throw new Refusal(
          "The form says nothing in \"" + name + "\": go back and fill it; nothing was decided.",
          new Problem(name, "", name.equals("same-as") ? "a model's name" : "a name"));
    }
    return value;
  }
}
