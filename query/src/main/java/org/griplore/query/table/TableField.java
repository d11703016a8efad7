package org.griplore.query.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Names;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.ModelRecord;
import org.griplore.store.vocabulary.SeasonClass;

/** Which tyres a table has, and why each is there. */
final class TableField {
  static final String PREDECESSORS = "predecessors";
  static final String SUCCESSORS = "successors";
  static final String RIVALS = "rivals";

  /** As many rivals as make a field of usual size with a few tyres of one's own. */
  static final int MOST_RIVALS = 5;

  /** A wider table is not read. */
  static final int MOST = 60;

  private TableField() {}

  /**
   * The tyres in the order of the table, by position, with their role: those asked for, each
   * followed by its relatives, then rivals, then the reference if it is none of them.
   *
   * @throws org.griplore.store.vocabulary.Refusal when a name means no model, or there are too many
   */
  static Map<Integer, String> of(
      Choices choices, Evidence evidence, Names names, Filter filter, Reference reference) {
    List<Integer> asked = names.models("models", choices.all("models"));
    List<String> with = choices.all("with");
    Map<Integer, Integer> predecessor = predecessors(evidence.models());
    Map<Integer, String> rows = new LinkedHashMap<>();
    for (int model : asked) {
      rows.put(model, "asked");
    }
    Map<Integer, String> ordered = new LinkedHashMap<>();
    for (int model : asked) {
      ordered.put(model, "asked");
      Integer before = predecessor.get(model);
      if (with.contains(PREDECESSORS) && before != null && !rows.containsKey(before)) {
        ordered.putIfAbsent(before, "predecessor");
      }
      if (with.contains(SUCCESSORS)) {
        predecessor.forEach(
            (newer, older) -> {
              if (older == model && !rows.containsKey(newer)) {
                ordered.putIfAbsent(newer, "successor");
              }
            });
      }
    }
    if (with.contains(RIVALS)) {
      rivals(evidence, filter, asked, predecessor)
          .forEach(rival -> ordered.putIfAbsent(rival, "rival"));
    }
    if (reference.chosen() != null) {
      ordered.putIfAbsent(reference.chosen(), "reference");
    }
    if (ordered.size() > MOST) {
      throw Choices.refusal("models", ordered.size() + " tyres", "at most " + MOST);
    }
    return ordered;
  }

  private static Map<Integer, Integer> predecessors(List<ModelRecord> models) {
    Map<Integer, Integer> positions = new HashMap<>();
    for (int i = 0; i < models.size(); i++) {
      positions.put(models.get(i).id(), i);
    }
    Map<Integer, Integer> predecessors = new TreeMap<>();
    for (int i = 0; i < models.size(); i++) {
      Integer before = positions.get(models.get(i).follows());
      if (before != null) {
        predecessors.put(i, before);
      }
    }
    return predecessors;
  }

  /** Whether a model is of the season class of one of the others, as far as classes are known. */
  private static boolean isOfClass(Evidence evidence, int model, List<Integer> others) {
    SeasonClass its = evidence.models().get(model).season();
    return its == null
        || others.stream()
            .map(other -> evidence.models().get(other).season())
            .anyMatch(season -> season == null || season == its);
  }

  private record Rival(int model, int shared, int lastTest) {}

  /**
   * Models of other makers, of the same season class, that shared most tests with those asked for,
   * then the latest, then by name; of a line's generations the newest that shared one.
   */
  private static List<Integer> rivals(
      Evidence evidence, Filter filter, List<Integer> asked, Map<Integer, Integer> predecessor) {
    TreeSet<Integer> tests = new TreeSet<>();
    TreeSet<String> makers = new TreeSet<>();
    for (int model : asked) {
      String maker = evidence.models().get(model).maker();
      if (maker != null) {
        makers.add(maker);
      }
      for (int i = evidence.entriesOfModel().from(model);
          i < evidence.entriesOfModel().to(model);
          i++) {
        int entry = evidence.entriesOfModel().rows()[i];
        if (filter.reasonAgainst(entry).isEmpty()) {
          tests.add(evidence.entries().test()[entry]);
        }
      }
    }
    Map<Integer, TreeSet<Integer>> shared = new TreeMap<>();
    for (int test : tests) {
      for (int i = evidence.entriesOfTest().from(test);
          i < evidence.entriesOfTest().to(test);
          i++) {
        int model = evidence.entries().model()[evidence.entriesOfTest().rows()[i]];
        String maker = evidence.models().get(model).maker();
        boolean another = maker == null || !makers.contains(maker);
        if (another && !asked.contains(model) && isOfClass(evidence, model, asked)) {
          shared.computeIfAbsent(model, none -> new TreeSet<>()).add(test);
        }
      }
    }
    List<Rival> rivals = new ArrayList<>();
    shared.forEach(
        (model, its) -> {
          boolean replaced =
              shared.keySet().stream().anyMatch(m -> Objects.equals(predecessor.get(m), model));
          if (!replaced) {
            rivals.add(new Rival(model, its.size(), its.last()));
          }
        });
    return rivals.stream()
        .sorted(
            Comparator.comparingInt(Rival::shared)
                .thenComparingInt(Rival::lastTest)
                .reversed()
                .thenComparingInt(Rival::model))
        .limit(MOST_RIVALS)
        .map(Rival::model)
        .toList();
  }
}
