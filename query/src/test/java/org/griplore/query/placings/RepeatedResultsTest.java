package org.griplore.query.placings;

import static org.assertj.core.api.Assertions.assertThat;

import org.griplore.query.answer.Exclusion;
import org.griplore.query.evidence.Citations;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Exclusions;
import org.griplore.query.ranking.TopShare;
import org.griplore.query.simulation.DrawnArchive;
import org.griplore.query.simulation.DrawnArchive.Said;
import org.junit.jupiter.api.Test;

class RepeatedResultsTest {
  /** Two sets of one model on the day have one place, by their mean or by the mean of places. */
  @Test
  void setsOfTheDayHaveOnePlaceByTheirMean() {
    DrawnArchive archive = new DrawnArchive();
    archive.models(5);
    int first = archive.test(Said.own("2019-04-01", "205/55 R16"));
    double[] metres = {30, 31, 31.5, 33, 35, 34};
    for (int i = 0; i < metres.length; i++) {
      archive.value(archive.entry(first, i % 5), "wet-braking", metres[i], Double.NaN, 0);
    }
    int second = archive.test(Said.own("2020", "205/55 R16"));
    int[] models = {0, 1, 2, 0, 3};
    for (int i = 0; i < models.length; i++) {
      archive.place(archive.entry(second, models[i]), "wet-braking", i + 1);
    }
    Evidence evidence = archive.evidence();
    Exclusions excluded = new Exclusions();
    PlacingRow us =
        new PlacingCounter(
                evidence,
                evidence.discipline("wet-braking"),
                DrawnArchive.open(evidence),
                3,
                4,
                TopShare.WHOLE,
                excluded,
                new Citations(evidence))
            .count(0)
            .orElseThrow();
    // 30 and 34 m are 32 m: third; places 1 and 4 are 2.5, a half counting as the worse
    assertThat(us.places()).extracting(Placing::place).containsExactly(3, 3);
    assertThat(us.places()).extracting(Placing::field).containsExactly(5, 5);
    assertThat(excluded.list())
        .containsExactly(
            new Exclusion("further results of a model in a test, averaged with its first", 2));
  }
}
