package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;

/**
 * Ratio of two means with its delta-method error and Satterthwaite degrees of freedom; expected
 * figures by R 4.2.2 (constructed data).
 */
class RatioOfMeansTest {
  private static final ReferenceCase CASE = new ReferenceCase("constructed-ratio-of-means");

  private static double[] group(String name) {
    return CASE.data().stream()
        .filter(row -> row[0].equals(name))
        .mapToDouble(row -> Double.parseDouble(row[1]))
        .toArray();
  }

  @Test
  void oneCandidateAgainstOneReferenceMeasurement() {
    ReducedLog log =
        new LogSketch()
            .values("R", Unit.METRE_PER_SECOND_SQUARED, group("b"))
            .values("A", Unit.METRE_PER_SECOND_SQUARED, group("a"))
            .reduce(LogSketch.CIRCLE);
    ReducedResult a = log.of("A").orElseThrow();
    assertThat(a.sets().get(0).set().mean()).isCloseTo(CASE.expected("mean.a"), within(1e-12));
    assertThat(log.references().get(0).mean()).isCloseTo(CASE.expected("mean.b"), within(1e-12));
    assertThat(a.ratio()).isCloseTo(CASE.expected("ratio"), within(1e-12));
    assertThat(a.ratioError()).isCloseTo(CASE.expected("se.delta"), within(1e-12));
    assertThat(a.effect().freedom()).isCloseTo(CASE.expected("df.satterthwaite"), within(1e-9));
    double variance = Math.pow(a.sets().get(0).set().standardError(), 2);
    assertThat(variance).isCloseTo(CASE.expected("var.mean.a"), within(1e-12));
  }

  @Test
  void theMissingClosingReferenceIsSaid() {
    ReducedLog log =
        new LogSketch()
            .values("R", Unit.METRE_PER_SECOND_SQUARED, group("b"))
            .values("A", Unit.METRE_PER_SECOND_SQUARED, group("a"))
            .reduce(LogSketch.CIRCLE);
    assertThat(log.remarks())
        .anySatisfy(r -> assertThat(r.found()).contains("R-T1-?").contains("no closing reference"))
        .anySatisfy(r -> assertThat(r.meaning()).contains("the drift of the track was not"));
  }
}
