package org.griplore.store.archive;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Takes decisions into an archive: all of them, or none when one contradicts what stands. */
final class DecisionWriter {
  private final Connection connection;

  DecisionWriter(Connection connection) {
    this.connection = connection;
  }

  /** Decides, and returns what was not decided so before. */
  List<Decision> decide(List<Decision> decisions) {
    List<Decision> taken = new ArrayList<>();
    for (Decision decision : decisions) {
      List<Decision> standing = Decisions.standing(connection, decision.topic());
      Decision before =
          standing.stream().filter(d -> d.key().equals(decision.key())).findFirst().orElse(null);
      if (before != null && before.agreesWith(decision)) {
        continue;
      }
      refuse(decision, before, standing);
      Decisions.write(connection, decision);
      taken.add(decision);
    }
    Meanings.settle(connection);
    Descent.refuseCircle(ModelReader.all(connection));
    return taken;
  }

  private void refuse(Decision decision, Decision before, List<Decision> standing) {
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
      refuseCircle(decision, standing);
      refuseToldOtherwise(decision);
    }
  }

  private static void refuseCircle(Decision decision, List<Decision> standing) {
    Map<String, Decision> byKey = new HashMap<>();
    standing.forEach(d -> byKey.put(d.key(), d));
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
      next = byKey.get(NameKey.of(next.value()));
    }
  }

  /** What a lineage table says the other way round would not hold any more without a word. */
  private void refuseToldOtherwise(Decision decision) {
    for (NameRecord name : NameReader.all(connection)) {
      boolean told =
          name.standing() == NameRecord.Standing.TOLD
              || name.standing() == NameRecord.Standing.KNOWN;
      if (told
          && NameKey.of(name.name()).equals(NameKey.of(decision.value()))
          && NameKey.of(name.model()).equals(decision.key())) {
        throw refusal(
            decision,
            "\"" + name.name() + "\" means " + name.model() + " (" + name.standing().words() + ")");
      }
    }
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
