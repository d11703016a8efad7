package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Reduction;
import org.griplore.store.vocabulary.Unit;
import org.junit.jupiter.api.Test;

/** What is kept of a log says which limits were broken and what that means. */
class LogAccountTest {
  private static final double[] GOOD = {30.0, 30.1, 30.2, 30.0, 30.1, 30.2};
  private static final double[] WIDE = {28.0, 32.0, 29.0, 31.0, 28.5, 31.5};

  private static Reduction account(LogSketch log) {
    ReductionOptions options = ReductionOptions.ofDiscipline("wet-braking");
    return LogAccount.of(LogSketch.WET, log.reduce(LogSketch.WET, options), options);
  }

  @Test
  void aReferenceTooWideIsVoidWithItsCycleAndTheSetsSaySo() {
    Reduction account =
        account(
            new LogSketch()
                .stops("R", 80, 20, GOOD)
                .stops("T1", 80, 20, GOOD)
                .stops("R", 80, 20, WIDE)
                .stops("T2", 80, 20, WIDE));
    assertThat(account.sets()).hasSize(4);
    assertThat(account.sets().get(0).valid()).isTrue();
    assertThat(account.sets().get(0).standing()).isEqualTo("valid");
    assertThat(account.sets().get(2).valid()).isFalse();
    assertThat(account.sets().get(2).standing()).contains("the reference breaks a limit");
    assertThat(account.sets().get(1).standing()).contains("voids its cycle");
    assertThat(account.sets().get(3).reasons()).hasSize(2).allMatch(r -> r.contains("below 3 %"));
    assertThat(account.limits())
        .anyMatch(
            limit ->
                limit.contains("CV within a set below 3 %")
                    && limit.contains("voids the cycles beside it, a candidate only itself"));
    assertThat(account.cycles())
        .containsExactly(
            "cycle 1, sequence 1 to 3, R-T1-R: the reference changes by "
                + String.format(
                    java.util.Locale.ROOT,
                    "%.2f %%",
                    100
                        * Math.abs(
                            account.sets().get(2).mean() / account.sets().get(0).mean() - 1)),
            "cycle 2, sequence 4 on, R-T1-?: the drift of the reference is not known");
    assertThat(account.better()).isEqualTo(Direction.HIGH);
    assertThat(account.unit()).isEqualTo(Unit.METRE_PER_SECOND_SQUARED);
  }

  @Test
  void anOutlierIsFlaggedAndCountsAndARunCalledInvalidDoesNot() {
    Reduction account =
        account(
            new LogSketch()
                .stops("R", 80, 20, 30.0, 30.1, 30.05, 30.0, 30.1, 36.0)
                .remarked("R", 80, 20, 20.0, "aborted")
                .stops("T1", 80, 20, GOOD));
    assertThat(account.sets().get(0).counted()).isEqualTo(6);
    assertThat(account.sets().get(0).runs().get(5).flag()).startsWith("outlier (Grubbs, p =");
    assertThat(account.sets().get(0).runs().get(5).leftOut()).isNull();
    assertThat(account.sets().get(0).runs().get(6).leftOut()).contains("aborted");
    assertThat(account.sets().get(0).runs().get(6).figure()).isNull();
  }

  @Test
  void whereNoLimitIsPublishedNothingIsCalledValid() {
    ReductionOptions options = ReductionOptions.ofDiscipline("wet-handling");
    ReducedLog log =
        new LogSketch()
            .laps("R", 80, 81)
            .laps("T1", 79, 80)
            .laps("R", 80, 81)
            .reduce(LogSketch.LAP, options);
    Reduction account = LogAccount.of(LogSketch.LAP, log, options);
    assertThat(account.sets().get(1).standing()).startsWith("not judged");
    assertThat(account.better()).isEqualTo(Direction.LOW);
    assertThat(account.sets().get(1).effect()).isCloseTo(Math.log(79.5 / 80.5), within(1e-12));
  }
}
