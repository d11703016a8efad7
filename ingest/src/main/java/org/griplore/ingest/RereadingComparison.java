package org.griplore.ingest;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts what the archive holds of a reading beside what its original tells, both in reading order.
 * Only what has no partner yet is kept in memory.
 */
final class RereadingComparison {
  /** So many sentences of a kind are told; the rest is counted. */
  private static final int TOLD = 10;

  private final String file;
  private final Map<String, Deque<StoredFact>> onlyStored = new LinkedHashMap<>();
  private final Map<String, Deque<StoredFact>> onlyRead = new LinkedHashMap<>();
  private final List<String> disagreements = new ArrayList<>();
  private final List<String> otherNames = new ArrayList<>();
  private long disagreeing;
  private long otherwiseNamed;
  private long compared;

  RereadingComparison(String file) {
    this.file = file;
  }

  void stored(StoredFact told) {
    StoredFact partner = take(onlyRead, told.key());
    if (partner == null) {
      onlyStored.computeIfAbsent(told.key(), key -> new ArrayDeque<>()).add(told);
    } else {
      compare(told, partner);
    }
  }

  void read(StoredFact told) {
    StoredFact partner = take(onlyStored, told.key());
    if (partner == null) {
      onlyRead.computeIfAbsent(told.key(), key -> new ArrayDeque<>()).add(told);
    } else {
      compare(partner, told);
    }
  }

  private static StoredFact take(Map<String, Deque<StoredFact>> from, String key) {
    Deque<StoredFact> waiting = from.get(key);
    if (waiting == null) {
      return null;
    }
    StoredFact first = waiting.poll();
    if (waiting.isEmpty()) {
      from.remove(key);
    }
    return first;
  }

  private void compare(StoredFact stored, StoredFact read) {
    compared++;
    if (!stored.says().equals(read.says())) {
      disagree(stored, "the archive has " + stored.says() + "; the original gives " + read.says());
    }
    if (!Objects.equals(stored.model(), read.model()) && ++otherwiseNamed <= TOLD) {
      otherNames.add(
          where(stored)
              + ": counts for "
              + stored.model()
              + "; read now it would count for "
              + read.model()
              + ".");
    }
  }

  /** Identities of what was read and has no partner. */
  Set<String> unpartnered() {
    return onlyRead.values().stream()
        .flatMap(Deque::stream)
        .filter(told -> told.identity() != null)
        .map(RereadingComparison::figureOf)
        .collect(Collectors.toSet());
  }

  /** What a figure is a figure of: of these a reading has one. */
  static String figureOf(StoredFact told) {
    return told.model() + told.identity();
  }

  /** Leaves out what was read and is repeated in the source: of these the first was kept. */
  void leaveOut(Set<String> identities) {
    onlyRead
        .values()
        .forEach(waiting -> waiting.removeIf(told -> identities.contains(figureOf(told))));
  }

  /** What was left without a partner is a disagreement. */
  void finish() {
    onlyStored.values().stream()
        .flatMap(Deque::stream)
        .forEach(
            told ->
                disagree(
                    told, "the archive has " + told.says() + "; the original gives nothing there"));
    onlyRead.values().stream()
        .flatMap(Deque::stream)
        .forEach(
            told ->
                disagree(
                    told, "the archive has nothing; the original gives " + told.says() + " there"));
    more(disagreements, disagreeing, "disagreements");
    more(otherNames, otherwiseNamed, "names");
  }

  private void disagree(StoredFact told, String sentence) {
    if (++disagreeing <= TOLD) {
      disagreements.add(where(told) + ": " + sentence + ".");
    }
  }

  private void more(List<String> sentences, long all, String what) {
    if (all > TOLD) {
      sentences.add(file + ": and " + (all - TOLD) + " more " + what + " like these.");
    }
  }

  private String where(StoredFact told) {
    String place = told.cell() == null ? "" : ", " + told.cell().place();
    String model = told.model() == null ? "" : told.model() + ", ";
    return file + place + " (" + model + told.of() + ")";
  }

  long compared() {
    return compared;
  }

  List<String> disagreements() {
    return List.copyOf(disagreements);
  }

  List<String> otherNames() {
    return List.copyOf(otherNames);
  }
}
