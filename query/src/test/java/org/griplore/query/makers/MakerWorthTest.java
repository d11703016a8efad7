package org.griplore.query.makers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.griplore.query.discipline.Networks;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.simulation.DrawnArchive;
import org.griplore.query.simulation.DrawnArchive.Said;
import org.griplore.store.vocabulary.SourceKind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class MakerWorthTest {
  private static final double FLATTERY = 0.03;

  /** Makers of lines of four generations; in makers' tests a newer one gains more than it does. */
  private static Evidence drawn(int makers, double between, Random random) {
    DrawnArchive archive = new DrawnArchive();
    double[] effect = new double[4 * makers];
    double[] flattery = new double[makers];
    for (int maker = 0; maker < makers; maker++) {
      flattery[maker] = FLATTERY + between * random.nextGaussian();
      for (int generation = 0; generation < 4; generation++) {
        int model =
            archive.model(
                "Maker " + maker,
                "Line " + maker,
                2008 + 4 * generation,
                generation == 0 ? -1 : archive.modelCount() - 1);
        effect[model] = 0.02 * generation + 0.03 * random.nextGaussian();
      }
    }
    for (int t = 0; t < 25; t++) {
      int test = archive.test(Said.own("20" + (10 + t / 2) + "-05-01", "205/55 R16"));
      double level = Math.log(40) + 0.05 * random.nextGaussian();
      for (int model : DrawnArchive.some(8, effect.length, random)) {
        double y = level - effect[model] + 0.012 * random.nextGaussian();
        archive.value(archive.entry(test, model), "wet-braking", Math.exp(y), Double.NaN, 0);
      }
    }
    for (int maker = 0; maker < makers; maker++) {
      for (int step = 0; step < 3; step++) {
        int test = archive.test(new Said("2020-06-01", SourceKind.MAKER, null, null, null));
        for (int newer = 0; newer < 2; newer++) {
          int model = 4 * maker + step + newer;
          double told = effect[model] + newer * flattery[maker] + 0.012 * random.nextGaussian();
          archive.value(
              archive.entry(test, model), "wet-braking", 40 * Math.exp(-told), Double.NaN, 0);
        }
      }
    }
    return archive.evidence();
  }

  /** Flattery of three per cent on average is found again and held by the interval. */
  @Tag("simulation")
  @Test
  void statedFlatteryIsRecovered() {
    Random random = new Random(33);
    int archives = 60;
    double sum = 0;
    double held = 0;
    for (int archive = 0; archive < archives; archive++) {
      Evidence evidence = drawn(6, 0.015, random);
      MakerWorth worth =
          MakerWorth.of(evidence, "wet-braking", DrawnArchive.open(evidence), new Networks())
              .orElseThrow();
      MakerWorth.Told told = worth.overall();
      double truth = 100 * Math.expm1(FLATTERY);
      assertThat(told.steps()).isBetween(10, 18);
      sum += told.better() / archives;
      held += told.low() <= truth && truth <= told.high() ? 1.0 / archives : 0;
    }
    assertThat(sum).as("mean found, seed 33").isCloseTo(3.05, within(0.4));
    assertThat(held).isBetween(0.88, 1.0);
  }

  @Test
  void withoutMakersReportsNothingIsSaid() {
    DrawnArchive archive = new DrawnArchive();
    archive.models(3);
    Evidence evidence = archive.evidence();
    assertThat(MakerWorth.of(evidence, "wet-braking", DrawnArchive.open(evidence), new Networks()))
        .isEmpty();
  }

  @Test
  void aMakersOwnIsDrawnTowardsAllAndSaidInASentence() {
    Evidence evidence = drawn(6, 0.05, new Random(5));
    MakerWorth worth =
        MakerWorth.of(evidence, "wet-braking", DrawnArchive.open(evidence), new Networks())
            .orElseThrow();
    assertThat(worth.of("nobody")).isEqualTo(worth.overall());
    assertThat(worth.of("Maker 1").steps()).isBetween(1, 3);
    assertThat(worth.words())
        .matches("Over 1\\d steps of 6 makers that both measured in wet-braking, .*");
  }
}
