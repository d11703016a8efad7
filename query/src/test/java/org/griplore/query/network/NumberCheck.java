package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.griplore.query.statistics.Interval;

/** Asserts that every number of an answer is finite. */
final class NumberCheck {
  private NumberCheck() {}

  static void number(OptionalDouble value) {
    value.ifPresent(v -> assertThat(v).isFinite());
  }

  static void estimate(Estimate e) {
    assertThat(e.value()).isFinite();
    number(e.se());
    number(e.z());
    number(e.p());
    e.interval(0.9).ifPresent(NumberCheck::interval);
  }

  static void comparison(ModelComparison comparison) {
    if (comparison instanceof EstimatedComparison c) {
      estimate(c.estimate());
      number(c.predictionSd());
      c.prediction(0.9).ifPresent(NumberCheck::interval);
    }
  }

  static void evidence(EvidenceSplit e) {
    comparison(e.network());
    e.direct().ifPresent(NumberCheck::estimate);
    e.indirect().ifPresent(NumberCheck::estimate);
    e.inconsistency().ifPresent(NumberCheck::estimate);
    number(e.directShare());
  }

  static void heterogeneity(NetworkFit fit) {
    number(fit.tauSquared());
    number(fit.residualVariance());
    fit.heterogeneity().ifPresent(NumberCheck::heterogeneity);
    fit.designSplit()
        .ifPresent(
            s -> {
              heterogeneity(s.within());
              heterogeneity(s.between());
            });
  }

  private static void heterogeneity(Heterogeneity h) {
    assertThat(h.q()).isFinite();
    assertThat(h.p()).isFinite();
    assertThat(h.iSquared()).isBetween(0.0, 1.0);
  }

  private static void interval(Interval i) {
    assertThat(i.low()).isFinite().isLessThanOrEqualTo(i.high());
    assertThat(i.high()).isFinite();
  }
}
