package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.vocabulary.Cell;

/**
 * How what was read compares with what a file truly says.
 *
 * @param right stated figures that were read, with all that they hold for
 * @param wrong figures of its tyres that it does not say
 * @param falseTyres what was taken for a tyre and is none
 * @param lost stated figures that were not read
 * @param silent those of the lost that no finding tells of, and findings that are missing
 * @param details details that were read as stated
 * @param detailFaults details that were read otherwise or not at all
 */
record Verdict(
    MessyFile file,
    ReadBack read,
    List<String> right,
    List<String> wrong,
    Set<String> falseTyres,
    List<String> lost,
    List<String> silent,
    List<String> details,
    List<String> detailFaults) {

  static Verdict of(MessyFile file, ReadBack read) {
    Verdict verdict =
        new Verdict(
            file,
            read,
            new ArrayList<>(),
            new ArrayList<>(),
            new LinkedHashSet<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>());
    verdict.compare();
    return verdict;
  }

  /** Whether everything is as it should be. */
  boolean whole() {
    if (read.failure() != null) {
      return false;
    }
    return switch (file.truth().decision()) {
      case NOTHING -> read.draft() || read.figures().isEmpty();
      case REFUSED -> read.refusal() != null;
      case DRAFT -> read.draft() || read.refusal() == null && !faulty();
      case EITHER -> read.refusal() == null && !faulty();
      case TAKEN -> read.refusal() == null && !read.draft() && !faulty();
    };
  }

  /** Whether it is kept as a draft whose best reading is right. */
  boolean draftRight() {
    return read.draft() && !faulty();
  }

  private boolean faulty() {
    return !(wrong.isEmpty()
        && falseTyres.isEmpty()
        && lost.isEmpty()
        && silent.isEmpty()
        && detailFaults.isEmpty());
  }

  private void compare() {
    List<ReadBack.Read> open = new ArrayList<>(read.figures());
    List<Truth.Stated> missing = new ArrayList<>();
    for (Truth.Test test : file.truth().tests()) {
      Map<String, Boolean> seen = new LinkedHashMap<>();
      List<String> faults = new ArrayList<>();
      for (Truth.Stated stated : test.figures()) {
        ReadBack.Read best = Likeness.best(stated, test, open);
        if (best == null) {
          missing.add(stated);
          continue;
        }
        open.remove(best);
        if (stated.required()) {
          right.add(stated.words());
        }
        Likeness.details(test, stated)
            .forEach(
                (topic, text) -> {
                  String found = Likeness.found(topic, best);
                  boolean same = Likeness.same(topic, text, found);
                  seen.merge(topic + " " + text, same, Boolean::logicalAnd);
                  if (!same) {
                    faults.add(topic + " " + text + ", read as " + found);
                  }
                });
      }
      if (seen.isEmpty() && read.refusal() == null && read.failure() == null) {
        test.details()
            .forEach((topic, text) -> seen.put(topic + " " + text, anywhere(topic, text)));
      }
      seen.forEach((detail, same) -> (same ? details : detailFaults).add(detail));
      faults.stream().distinct().limit(3).forEach(fault -> detailFaults.set(indexOf(fault), fault));
    }
    int count = file.truth().count();
    if (count > 0 && read.tests().size() != count) {
      detailFaults.add(count + " tests, read as " + read.tests().size());
    }
    for (ReadBack.Read extra : open) {
      if (!file.truth().names(extra.model())) {
        falseTyres.add(extra.model());
      } else if (!file.truth().allows(extra.model(), extra.discipline())) {
        wrong.add(extra.words());
      }
    }
    List<Cell> cells = missing.isEmpty() ? List.of() : Telling.cells(file);
    for (Truth.Stated stated : missing) {
      if (stated.required()) {
        lost.add(stated.words());
      }
      if (stated.need() != Truth.Need.FREE && !Telling.tells(read, cells, stated)) {
        silent.add(stated.words());
      }
    }
    for (String text : file.truth().finds()) {
      if (read.refusal() == null && !Telling.tells(read, text)) {
        silent.add("no finding tells of " + text);
      }
    }
  }

  private int indexOf(String fault) {
    for (int i = 0; i < detailFaults.size(); i++) {
      if (fault.startsWith(detailFaults.get(i))) {
        return i;
      }
    }
    detailFaults.add("");
    return detailFaults.size() - 1;
  }

  private boolean anywhere(String topic, String text) {
    return read.tests().stream()
        .anyMatch(test -> Likeness.same(topic, text, Likeness.found(topic, test)));
  }
}
