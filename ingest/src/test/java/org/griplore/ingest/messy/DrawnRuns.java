package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;

/** One discipline with a column a run, and perhaps their mean. */
final class DrawnRuns {
  private final DrawnTest test;
  private final DrawnLook look;
  private final DrawnHeads heads;
  private final DrawnTruth truth;
  private final Random random;

  DrawnRuns(DrawnTest test, DrawnLook look, DrawnHeads heads, DrawnTruth truth, Random random) {
    this.test = test;
    this.look = look;
    this.heads = heads;
    this.truth = truth;
    this.random = random;
  }

  Sketch sketch(
      DrawnDetails details,
      List<String> names,
      BiFunction<DrawnTest.Tyre, DrawnTest.Tyre, List<String>> name) {
    DrawnTest.Measure measure = test.measures().get(0);
    int runs = 3 + random.nextInt(3);
    boolean mean = random.nextInt(4) > 0;
    List<List<String>> above = new ArrayList<>(details.above());
    String unit = heads.unit(0).isEmpty() ? "" : " [" + heads.unit(0) + "]";
    above.add(List.of(heads.bare(0) + unit));
    List<List<String>> table = new ArrayList<>();
    List<String> head = new ArrayList<>(names);
    for (int r = 1; r <= runs; r++) {
      head.add(look.words().say("run", random) + " " + r);
    }
    if (mean) {
      head.add(look.words().say("mean", random));
    }
    table.add(head);
    for (int i = 0; i < test.tyres().size(); i++) {
      table.add(row(name.apply(test.tyres().get(i), null), measure, i, runs, mean));
    }
    return new Sketch("Sheet1", above, table, 1, details.below());
  }

  private List<String> row(
      List<String> name, DrawnTest.Measure measure, int tyre, int runs, boolean mean) {
    List<Double> values = new ArrayList<>();
    for (int r = 0; r < runs; r++) {
      double value = measure.values().get(tyre) * (1 + 0.006 * random.nextGaussian());
      values.add(DrawnTest.rounded(value, measure.decimals()));
    }
    List<String> row = new ArrayList<>(name);
    values.forEach(value -> row.add(DrawnFigures.number(value, measure, look)));
    double average = DrawnScores.mean(values);
    double printed = DrawnTest.rounded(average, measure.decimals());
    if (mean) {
      row.add(DrawnFigures.number(printed, measure, look));
    }
    double byDecelerations = runs / values.stream().mapToDouble(value -> 1 / value).sum();
    truth.value(
        test.tyres().get(tyre),
        measure,
        mean ? List.of(printed, average) : List.of(average, byDecelerations));
    return row;
  }
}
