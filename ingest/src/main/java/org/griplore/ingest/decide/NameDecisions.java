package org.griplore.ingest.decide;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.griplore.store.archive.Archive;
import org.griplore.store.names.OpenName;
import org.griplore.store.names.OpenNames;
import org.griplore.store.vocabulary.Decision;
import org.griplore.store.vocabulary.Decision.Topic;
import org.griplore.store.vocabulary.Decision.Verdict;
import org.griplore.store.vocabulary.Refusal;

/** Decides which models names mean. Every decision holds at once and for files added later. */
public final class NameDecisions {
  private final Archive archive;
  private final Clock clock;

  /** Decides in an archive that can be written. */
  public NameDecisions(Archive archive, Clock clock) {
    this.archive = archive;
    this.clock = clock;
  }

  /**
   * Decides that names mean a model.
   *
   * @param words why, in the user's words; where empty, how alike the names are
   * @return what was new
   * @throws Refusal when a name or the model is not known, or it contradicts what stands
   */
  public List<Decision> sameAs(List<String> names, String model, String words) {
    KnownNames known = new KnownNames(archive);
    String means = known.model("same-as", model);
    List<Decision> decisions = new ArrayList<>();
    for (String typed : names) {
      String name = known.name(typed);
      String why = words.isBlank() ? known.likeness(name, means) : words.strip();
      decisions.add(decision(name, Verdict.IS, means, why));
    }
    return archive.decide(decisions);
  }

  /**
   * Decides that names are models of their own.
   *
   * @throws Refusal as {@link #sameAs}
   */
  public List<Decision> own(List<String> names, String words) {
    return decide(names, Verdict.NONE, words);
  }

  /**
   * Takes the decisions on names back: they mean what the sources say.
   *
   * @throws Refusal when nothing was decided on one of them
   */
  public List<Decision> takeBack(List<String> names, String words) {
    return decide(names, Verdict.OPEN, words);
  }

  /** Decides that all open names without a candidate are models of their own. */
  public List<Decision> restAreOwn(String words) {
    List<Decision> decisions = new ArrayList<>();
    for (OpenName name : OpenNames.of(archive)) {
      if (name.candidates().isEmpty()) {
        String why = words.isBlank() ? "no other name is like it" : words.strip();
        decisions.add(decision(name.name(), Verdict.NONE, null, why));
      }
    }
    return archive.decide(decisions);
  }

  private List<Decision> decide(List<String> names, Verdict verdict, String words) {
    KnownNames known = new KnownNames(archive);
    List<String> decided =
        archive.decisions().stream()
            .filter(decision -> decision.topic() == Topic.MEANING)
            .map(Decision::key)
            .toList();
    List<Decision> decisions = new ArrayList<>();
    for (String typed : names) {
      Decision decision = decision(typed.strip(), verdict, null, words.strip());
      boolean isThere = verdict == Verdict.OPEN && decided.contains(decision.key());
      decisions.add(isThere ? decision : decision(known.name(typed), verdict, null, words.strip()));
    }
    return archive.decide(decisions);
  }

  private Decision decision(String name, Verdict verdict, String value, String words) {
    return new Decision(name, Topic.MEANING, verdict, value, clock.instant(), words);
  }
}
