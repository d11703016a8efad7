package org.griplore.query.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.query.statistics.Tails;

/**
 * What a field is expected to do in one discipline.
 *
 * @param spreads how far things differ
 * @param contrasts differences it rests on
 * @param tests tests it rests on
 * @param leftOut tests of a large archive that it does not rest on
 * @param field the models that something is known of, by position in the evidence
 * @param basis what each rests on
 * @param results their results in a new test, each less the mean of the field
 * @param usualStep from one generation to the next
 */
record DisciplineOutlook(
    VarianceComponents spreads,
    int contrasts,
    int tests,
    int leftOut,
    int[] field,
    ExpectationBasis[] basis,
    Levels results,
    double usualStep) {
  /** With fewer differences inside tests nothing is said. */
  private static final int FEWEST_CONTRASTS = 4;

  private static final double WORK = 1e9;
  private static final double SEARCH_WORK = 2e7;

  /**
   * Reckons it.
   *
   * @param all the discipline's tests in the order of {@link TestBlocks}
   * @return empty when the tests are too few or alike, or fewer than two of the models are known
   */
  static Optional<DisciplineOutlook> of(DescentForest descent, List<TestBlock> all, int[] asked) {
    List<TestBlock> rounds = Affordable.about(descent, all, asked, WORK);
    int contrasts = rounds.stream().mapToInt(TestBlock::contrasts).sum();
    ExpectationBasis[] basis = basis(descent, rounds, asked);
    List<Integer> known = new ArrayList<>();
    for (int i = 0; i < asked.length; i++) {
      if (basis[i] != ExpectationBasis.NONE) {
        known.add(i);
      }
    }
    if (rounds.size() < 2 || contrasts < FEWEST_CONTRASTS || known.size() < 2) {
      return Optional.empty();
    }
    VarianceComponents spreads =
        VarianceComponentsFit.of(descent, Affordable.newest(descent, rounds, SEARCH_WORK), null);
    if (spreads == null) {
      return Optional.empty();
    }
    int[] field = known.stream().mapToInt(i -> asked[i]).toArray();
    Needed needed = new Needed(descent, rounds, field);
    LevelPosterior belief = new LevelPosterior(descent, spreads);
    for (int r = 0; r < rounds.size(); r++) {
      belief.take(rounds.get(r));
      for (int model : needed.endingAt(r)) {
        belief.forget(model);
      }
    }
    double[] variance = new double[field.length];
    java.util.Arrays.fill(variance, spreads.result(0));
    return Optional.of(
        new DisciplineOutlook(
            spreads,
            contrasts,
            rounds.size(),
            all.size() - rounds.size(),
            field,
            known.stream().map(i -> basis[i]).toArray(ExpectationBasis[]::new),
            belief.levels(field).results(variance).lessMean(),
            belief.usualStep()));
  }

  private static ExpectationBasis[] basis(DescentForest descent, List<TestBlock> rounds, int[] asked) {
    boolean[] tested = new boolean[descent.parent().length];
    boolean[] above = new boolean[tested.length];
    for (TestBlock round : rounds) {
      for (int model : round.models()) {
        tested[model] = true;
        for (int at = descent.parent()[model]; at >= 0 && !above[at]; at = descent.parent()[at]) {
          above[at] = true;
        }
      }
    }
    ExpectationBasis[] basis = new ExpectationBasis[asked.length];
    for (int i = 0; i < asked.length; i++) {
      basis[i] =
          tested[asked[i]]
              ? ExpectationBasis.TESTS
              : descent.ancestor(asked[i], tested) >= 0
                  ? ExpectationBasis.PREDECESSOR
                  : above[asked[i]] ? ExpectationBasis.SUCCESSOR : ExpectationBasis.NONE;
    }
    return basis;
  }

  /** Half width of an interval in standard deviations: Student's t of what is known. */
  double factor(double level) {
    return Tails.student(level, PastPredictions.degrees(contrasts));
  }
}
