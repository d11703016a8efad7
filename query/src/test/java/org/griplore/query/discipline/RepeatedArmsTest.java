package org.griplore.query.discipline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.query.answer.Exclusion;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.simulation.DrawnArchive;
import org.griplore.query.simulation.DrawnArchive.Said;
import org.junit.jupiter.api.Test;

class RepeatedArmsTest {
  /** By arithmetic: means of sets, their variance the larger of that of runs and that of sets. */
  @Test
  void setsOfTheDayAreAveragedWithTheirSpread() {
    DrawnArchive archive = new DrawnArchive();
    archive.models(4);
    int test = archive.test(Said.own("2020-05-01", "205/55 R16"));
    double[][] sets = {{70, 71, 72}, {71, 73}, {69}, {70, 68}};
    for (int model = 0; model < sets.length; model++) {
      for (double set : sets[model]) {
        archive.value(archive.entry(test, model), "exterior-noise", set, 0.2, 4);
      }
    }
    Evidence evidence = archive.evidence();
    DisciplineArms arms =
        DisciplineArms.of(evidence, "exterior-noise", DrawnArchive.open(evidence));
    // decibels: plus is better, so the sign turns
    assertThat(arms.y()).containsExactly(new double[] {-71, -72, -69, -69}, within(1e-12));
    // sums of squares 2, 2 and 2 over 2 + 1 + 1 degrees of freedom
    assertThat(arms.repeatVariance()).hasValue(1.5);
    assertThat(arms.variance())
        .containsExactly(new double[] {0.5, 0.75, 0.01, 0.75}, within(1e-12));
    assertThat(arms.excluded().list())
        .containsExactly(
            new Exclusion("further results of a model in a test, averaged with its first", 4));
  }
}
