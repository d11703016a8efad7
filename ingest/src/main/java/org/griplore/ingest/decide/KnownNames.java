package org.griplore.ingest.decide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.griplore.ingest.names.Candidate;
import org.griplore.ingest.names.NameReconciler;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** The names that an archive uses, found however they are typed. */
final class KnownNames {
  private final NameReconciler reconciler;
  private final Map<String, NameRecord> byKey = new HashMap<>();

  KnownNames(Archive archive) {
    reconciler = NameReconciler.of(archive);
    archive.names().forEach(name -> byKey.putIfAbsent(NameKey.of(name.name()), name));
  }

  /**
   * The name as the archive keeps it.
   *
   * @throws Refusal when no source uses it
   */
  String name(String typed) {
    NameRecord name = byKey.get(NameKey.of(typed));
    return name != null ? name.name() : model("name", typed);
  }

  /**
   * The model that a name means.
   *
   * @throws Refusal when the archive has none; the nearest are offered
   */
  String model(String what, String typed) {
    NameRecord name = byKey.get(NameKey.of(typed));
    if (name != null) {
      return name.model();
    }
    return reconciler
        .known(typed)
        .map(this::meant)
        .orElseThrow(
            () -> {
              List<Candidate> near = reconciler.candidates(typed);
              String offered =
                  near.stream().map(Candidate::model).collect(Collectors.joining(", or "));
              return new Refusal(
                  "The archive knows no model \""
                      + typed
                      + "\""
                      + (near.isEmpty()
                          ? "; `griplore models` lists them all."
                          : ": did you mean " + offered + "?"),
                  new Problem(what, typed, near.isEmpty() ? "a model's name" : offered));
            });
  }

  private String meant(String model) {
    NameRecord name = byKey.get(NameKey.of(model));
    return name == null ? model : name.model();
  }

  /** Why a name is like a model's, in words; empty when it is not. */
  String likeness(String name, String model) {
    return reconciler.candidates(name).stream()
        .filter(candidate -> candidate.model().equals(model))
        .findFirst()
        .map(Candidate::reason)
        .orElse("");
  }
}
