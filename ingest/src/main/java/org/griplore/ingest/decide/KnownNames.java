package org.griplore.ingest.decide;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NameRecord;
import org.griplore.store.names.Candidate;
import org.griplore.store.names.NameFinder;
import org.griplore.store.names.UnknownName;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Refusal;

/** The names and models of an archive, found as they are typed. */
final class KnownNames {
  private static final int OFFERED = 3;

  private final NameFinder finder;
  private final Map<String, NameRecord> byKey = new HashMap<>();

  KnownNames(Archive archive) {
    finder = NameFinder.of(archive.models());
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
   * @throws Refusal when the archive has none, or several; the nearest are offered
   */
  String model(String what, String typed) {
    NameRecord name = byKey.get(NameKey.of(typed));
    if (name != null) {
      return name.model();
    }
    Set<String> exact = finder.exact(typed);
    if (exact.size() == 1) {
      return exact.iterator().next();
    }
    throw UnknownName.refusal(
        what, typed, "is no model in the archive", finder.nearest(typed, OFFERED));
  }

  /** Why a name is like a model's, in words; empty when it is not. */
  String likeness(String name, String model) {
    return finder.candidates(name, OFFERED).stream()
        .filter(candidate -> candidate.model().equals(model))
        .findFirst()
        .map(Candidate::reason)
        .orElse("");
  }
}
