package org.griplore.query.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Format;
import org.griplore.query.answer.Lead;
import org.griplore.query.discipline.DisciplineArms;
import org.griplore.query.discipline.Network;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.store.vocabulary.TestDate;

/**
 * A test that held both models of a contrast.
 *
 * @param date as exactly as known; null when not stated
 * @param first the first model's value as the archive keeps it
 * @param second the second model's
 * @param difference the first less the second, plus is better, in the contrast's unit
 * @param source number of the report of the first in the answer's sources
 * @param firstResult number of the first's stored result
 * @param secondResult number of the second's
 */
public record HeadToHead(
    String test,
    String date,
    double first,
    String firstUnit,
    double second,
    String secondUnit,
    double difference,
    int source,
    long firstResult,
    long secondResult) {
  static final List<Column<HeadToHead>> COLUMNS =
      List.of(
          Column.of("test", "Test", Format.TEST, HeadToHead::test),
          Column.of("date", "Date", Format.DATE, HeadToHead::date),
          Column.number("first", "First", Format.NUMBER, 2, HeadToHead::first)
              .inUnitOf("firstUnit")
              .means("The first model's value.")
              .leadingTo((row, asked) -> Lead.result(row.firstResult())),
          Column.of("firstUnit", "in", Format.UNIT, HeadToHead::firstUnit).means("Its unit."),
          Column.<HeadToHead>of(
                  "firstResult", "First's cell", Format.RESULT, HeadToHead::firstResult)
              .means("The first model's stored result.")
              .asDetail(),
          Column.number("second", "Second", Format.NUMBER, 2, HeadToHead::second)
              .inUnitOf("secondUnit")
              .means("The second model's value.")
              .leadingTo((row, asked) -> Lead.result(row.secondResult())),
          Column.of("secondUnit", "in", Format.UNIT, HeadToHead::secondUnit).means("Its unit."),
          Column.<HeadToHead>of(
                  "secondResult", "Second's cell", Format.RESULT, HeadToHead::secondResult)
              .means("The second model's stored result.")
              .asDetail(),
          Column.number("difference", "Difference", Format.DELTA, 1, HeadToHead::difference)
              .means("The first less the second, plus is better, in the contrast's unit."),
          Column.of("source", "Source", Format.COUNT, HeadToHead::source)
              .means("Number of the report of the first among the sources."));

  /** The tests that held both, oldest first. */
  static List<HeadToHead> of(
      Evidence evidence, Network network, int first, int second, Citations citations) {
    DisciplineArms arms = network.arms();
    Map<Integer, Integer> firstArm = new HashMap<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      if (arms.model()[arm] == first) {
        firstArm.put(arms.test()[arm], arm);
      }
    }
    List<HeadToHead> headToHeads = new ArrayList<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      Integer other = arms.model()[arm] == second ? firstArm.get(arms.test()[arm]) : null;
      if (other != null) {
        headToHeads.add(inTest(evidence, network, other, arm, citations));
      }
    }
    headToHeads.sort(
        java.util.Comparator.comparing(
                HeadToHead::date,
                java.util.Comparator.nullsLast(java.util.Comparator.naturalOrder()))
            .thenComparing(HeadToHead::test));
    return headToHeads;
  }

  private static HeadToHead inTest(
      Evidence evidence, Network network, int first, int second, Citations citations) {
    DisciplineArms arms = network.arms();
    var test = evidence.tests().get(arms.test()[first]);
    TestDate date = test.details().date();
    int firstRow = arms.result()[first];
    int secondRow = arms.result()[second];
    return new HeadToHead(
        test.key(),
        date == null ? null : date.text(),
        evidence.results().value()[firstRow],
        unit(evidence, firstRow),
        evidence.results().value()[secondRow],
        unit(evidence, secondRow),
        network.measure().shown(arms.y()[first] - arms.y()[second]),
        citations.citeEntry(arms.entry()[first]),
        evidence.results().id()[firstRow],
        evidence.results().id()[secondRow]);
  }

  private static String unit(Evidence evidence, int result) {
    return evidence.units().get(evidence.results().unit()[result]);
  }
}
