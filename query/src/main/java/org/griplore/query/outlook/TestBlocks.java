package org.griplore.query.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.evidence.Evidence;
import org.griplore.store.vocabulary.TestDate;

/** The tests of one discipline in the order of the latest day they can have been run. */
final class TestBlocks {
  private TestBlocks() {}

  /** Tests with two results or more; those without a date come last. */
  static List<TestBlock> of(Evidence evidence, DisciplineArms arms) {
    Map<Integer, List<Integer>> byTest = new TreeMap<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      byTest.computeIfAbsent(arms.test()[arm], t -> new ArrayList<>()).add(arm);
    }
    List<TestBlock> blocks = new ArrayList<>();
    byTest.forEach(
        (test, of) -> {
          if (of.size() > 1) {
            blocks.add(block(evidence, arms, test, of));
          }
        });
    blocks.sort(
        Comparator.comparing(TestBlock::last, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(TestBlock::test));
    return blocks;
  }

  private static TestBlock block(
      Evidence evidence, DisciplineArms arms, int test, List<Integer> ofTest) {
    int[] of = ofTest.stream().mapToInt(arm -> arm).toArray();
    int size = of.length;
    int[] models = new int[size];
    int[] entries = new int[size];
    double[] y = new double[size];
    int[] runs = new int[size];
    double[] scatter = new double[size];
    for (int i = 0; i < size; i++) {
      models[i] = arms.model()[of[i]];
      entries[i] = arms.entry()[of[i]];
      y[i] = arms.y()[of[i]];
      runs[i] = evidence.results().runs()[arms.result()[of[i]]];
      double variance = arms.variance()[of[i]] * runs[i];
      scatter[i] = variance > 0 && runs[i] > 1 ? variance : Double.NaN;
    }
    TestDate date = evidence.tests().get(test).details().date();
    return new TestBlock(
        test,
        date == null ? null : date.firstDay(),
        date == null ? null : lastDay(date),
        models,
        entries,
        y,
        runs,
        scatter);
  }

  private static LocalDate lastDay(TestDate date) {
    return switch (date.text().length()) {
      case 4 -> date.firstDay().plusYears(1).minusDays(1);
      case 7 -> date.firstDay().plusMonths(1).minusDays(1);
      default -> date.firstDay();
    };
  }
}
