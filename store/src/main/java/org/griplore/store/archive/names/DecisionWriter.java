package org.griplore.store.archive.names;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Takes decisions into an archive: all of them, or none when one contradicts what stands. */
public final class DecisionWriter {
  private final Connection connection;
  private final Map<Topic, Map<String, Decision>> standing = new EnumMap<>(Topic.class);
  private Map<String, NameRecord> told;

  public DecisionWriter(Connection connection) {
    this.connection = connection;
    Decisions.standing(connection).forEach(d -> on(d.topic()).put(d.key(), d));
  }

  private Map<String, Decision> on(Topic topic) {
    return standing.computeIfAbsent(topic, t -> new HashMap<>());
  }

  /** Decides, and returns what was not decided so before. */
  public List<Decision> decide(List<Decision> decisions) {
    List<Decision> taken = new ArrayList<>();
    for (Decision decision : decisions) {
      Decision before = on(decision.topic()).get(decision.key());
      if (before != null && before.agreesWith(decision)) {
        continue;
      }
      refuse(decision, before);
      Decisions.write(connection, decision);
      if (decision.verdict() == Verdict.OPEN) {
        on(decision.topic()).remove(decision.key());
      } else {
        on(decision.topic()).put(decision.key(), decision);
      }
      taken.add(decision);
    }
    Meanings.settle(connection);
    Settled.models(connection);
    Descent.refuseCircle(ModelReader.all(connection));
    return taken;
  }

  private void refuse(Decision decision, Decision before) {
    if (decision.verdict() == Verdict.OPEN) {
      if (before == null) {
        throw refusal(decision, "nothing was decided on it that could be taken back");
      }
      return;
    }
    if (decision.topic() != Topic.MEANING) {
      return;
    }
    if (before != null) {
      throw refusal(
          decision,
          "it was decided on "
              + before.decidedAt().toString().substring(0, 10)
              + " that "
              + before.clause()
              + "; take that back first");
    }
    if (decision.verdict() == Verdict.IS) {
      refuseCircle(decision);
      refuseToldOtherwise(decision);
    }
  }

  private void refuseCircle(Decision decision) {
    Set<String> chain = new LinkedHashSet<>();
    Decision next = decision;
    while (next != null && next.value() != null) {
      chain.add("\"" + next.name() + "\"");
      if (NameKey.of(next.value()).equals(decision.key())) {
        throw refusal(
            decision,
            chain.size() == 1
                ? "they are one name"
                : "it would lead back to itself ("
                    + String.join(" is the same as ", chain)
                    + " is the same as \""
                    + decision.name()
                    + "\"); take one of these back first");
      }
      next = on(Topic.MEANING).get(NameKey.of(next.value()));
    }
  }

  /** What a lineage table says the other way round would not hold any more without a word. */
  private void refuseToldOtherwise(Decision decision) {
    String key = NameKey.of(decision.value());
    NameRecord name = told().get(key);
    if (name != null
        && !on(Topic.MEANING).containsKey(key)
        && NameKey.of(name.model()).equals(decision.key())) {
      throw refusal(
          decision,
          "\"" + name.name() + "\" means " + name.model() + " (" + name.standing().words() + ")");
    }
  }

  /** The names that sources settled without an assumption, by their comparing form. */
  private Map<String, NameRecord> told() {
    if (told == null) {
      told = new HashMap<>();
      for (NameRecord name : NameReader.all(connection)) {
        if (name.standing() == NameRecord.Standing.TOLD
            || name.standing() == NameRecord.Standing.KNOWN) {
          told.put(NameKey.of(name.name()), name);
        }
      }
    }
    return told;
  }

  private static Refusal refusal(Decision decision, String because) {
    return new Refusal(
        "It cannot be decided that "
            + decision.clause()
            + ": "
            + because
            + "; nothing was decided.",
        new Problem("decision", decision.clause(), because));
  }
}
